package canvas

import (
	"cmp"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"sync"

	"golang.org/x/image/font/sfnt"
)

// FontFile gives the letters that one font file has, and reads it at once to tell what
// is wrong with it.
func FontFile(name string) (FontSource, error) {
	data, err := os.ReadFile(name)
	if err != nil {
		return nil, err
	}
	c, err := sfnt.ParseCollection(data)
	if err != nil {
		return nil, fmt.Errorf("%s is no font that can be read, TrueType or OpenType: %w", name, err)
	}
	if _, err := fontOf(data, 0); err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	return func(char rune) ([]byte, int) {
		if i := indexWith(c, char); i >= 0 {
			return data, i
		}
		return nil, 0
	}, nil
}

// MachineFonts gives letters from the free fonts that are found in some folders; with
// none named, where this machine keeps its fonts. Folders are looked through when a
// letter is first asked for. A font is free that says so itself: by the entry of its
// licence.
func MachineFonts(folders ...string) FontSource {
	if len(folders) == 0 {
		folders = fontFolders()
	}
	files := sync.OnceValue(func() []string { return fontFiles(folders) })
	return func(char rune) ([]byte, int) {
		for _, name := range files() {
			if i := freeWith(name, char); i >= 0 {
				if data, err := os.ReadFile(name); err == nil {
					return data, i
				}
			}
		}
		return nil, 0
	}
}

// FirstOf asks one source after the other.
func FirstOf(sources ...FontSource) FontSource {
	return func(char rune) ([]byte, int) {
		for _, s := range sources {
			if data, i := s(char); data != nil {
				return data, i
			}
		}
		return nil, 0
	}
}

// fontFolders are those where fonts are usually kept.
func fontFolders() []string {
	home, _ := os.UserHomeDir()
	switch runtime.GOOS {
	case "windows":
		return []string{filepath.Join(os.Getenv("WINDIR"), "Fonts"), filepath.Join(os.Getenv("LOCALAPPDATA"), "Microsoft", "Windows", "Fonts")}
	case "darwin":
		return []string{"/Library/Fonts", filepath.Join(home, "Library", "Fonts"), "/System/Library/Fonts"}
	}
	return []string{"/usr/share/fonts", "/usr/local/share/fonts", filepath.Join(home, ".local", "share", "fonts"), filepath.Join(home, ".fonts")}
}

// fontFiles lists the font files of folders, the plainest first.
func fontFiles(folders []string) []string {
	var out []string
	for _, folder := range folders {
		_ = filepath.WalkDir(folder, func(name string, d fs.DirEntry, err error) error {
			if err == nil && !d.IsDir() && slices.Contains([]string{".ttf", ".otf", ".ttc", ".otc"}, strings.ToLower(filepath.Ext(name))) {
				out = append(out, name)
			}
			return nil // what cannot be read has no fonts
		})
	}
	slices.SortFunc(out, func(a, b string) int { return cmp.Or(cmp.Compare(oddness(a), oddness(b)), cmp.Compare(a, b)) })
	return out
}

// oddness counts what in a file's name tells that it does not go with an upright face
// without serifs.
func oddness(name string) int {
	base, n := strings.ToLower(filepath.Base(name)), 0
	for _, odd := range []string{"serif", "mono", "bold", "italic", "oblique", "light", "thin", "black", "medium", "condensed", "heavy", "math", "fallback"} {
		if strings.Contains(base, odd) {
			n++
		}
	}
	return n
}

// freeWith gives which free font of a file has a character; −1 where none has.
func freeWith(name string, char rune) int {
	f, err := os.Open(name)
	if err != nil {
		return -1
	}
	defer f.Close()
	c, err := sfnt.ParseCollectionReaderAt(f)
	if err != nil {
		return -1
	}
	i := indexWith(c, char)
	if i < 0 || !free(c, i) {
		return -1
	}
	return i
}

// indexWith gives which font of a collection has a character; −1 where none has.
func indexWith(c *sfnt.Collection, char rune) int {
	var b sfnt.Buffer
	for i := range c.NumFonts() {
		f, err := c.Font(i)
		if err != nil {
			continue
		}
		if g, err := f.GlyphIndex(&b, char); err == nil && g != 0 {
			return i
		}
	}
	return -1
}

// freeLicences are what the licence entry of a free font speaks of.
var freeLicences = []string{"open font license", "scripts.sil.org/ofl", "openfontlicense", "apache license", "gnu general public license", "gpl", "public domain", "creative commons", "mit license"}

// free tells whether a font says that it may be passed on.
func free(c *sfnt.Collection, index int) bool {
	f, err := c.Font(index)
	if err != nil {
		return false
	}
	var b sfnt.Buffer
	for _, id := range []sfnt.NameID{sfnt.NameIDLicense, sfnt.NameIDLicenseURL} {
		said, err := f.Name(&b, id)
		if err == nil && slices.ContainsFunc(freeLicences, func(l string) bool { return strings.Contains(strings.ToLower(said), l) }) {
			return true
		}
	}
	return false
}
