package web

import (
	"errors"
	"io"
	"mime"
	"mime/multipart"
	"net/http"
	"net/url"
	"strings"

	"ramplan/press"
	"ramplan/web/page"
	"ramplan/web/view"
)

// maxInputs is the most inputs that a form may hold: every entry of a draft, its
// carrier, and the rest.
const maxInputs = 3 * press.MaxEntries

// A posted form: the entries, and what is carried along with them.
type posted struct {
	do      string      // what the pressed button wants
	typed   view.Typed  //
	version int64       // of the draft that the form started from
	state   int64       // of the history, that was the draft then; 0 where that is not said
	window  string      // that sent it
	paste   string      // two columns of text
	growth  view.Growth // the aid beside the reference uncertainty
	file    *postedFile // a chosen file

	mine   string            // the entries of this side, as a draft file
	picks  map[string]string // by path, the side that was picked
	signed map[string]string // what was signed, by the path of its fault
}

type postedFile struct {
	name string
	data []byte
}

// input is one name and value of a form, in the order of the form.
type input struct{ name, value string }

// readForm reads the form of a request, whichever way it was sent.
func readForm(r *http.Request) (*posted, error) {
	inputs, file, err := readInputs(r)
	if err != nil {
		return nil, err
	}
	return sortInputs(inputs, file), nil
}

// readInputs reads the names and values of a form, in its order, and the file that it may hold.
func readInputs(r *http.Request) ([]input, *postedFile, error) {
	kind, params, err := mime.ParseMediaType(r.Header.Get("Content-Type"))
	if err != nil {
		kind = ""
	}
	switch kind {
	case "multipart/form-data":
		return readMultipart(r.Body, params["boundary"])
	case "application/x-www-form-urlencoded":
		inputs, err := readEncoded(r.Body)
		return inputs, nil, err
	}
	return nil, nil, errNoForm
}

var errNoForm = refusal{http.StatusBadRequest, say.FormNeeded(), nil}

var errTooMany = refusal{http.StatusBadRequest, say.TooManyEntries(), nil}

func broken(err error) error {
	var large *http.MaxBytesError
	if errors.As(err, &large) {
		return err
	}
	return refusal{http.StatusBadRequest, say.FormUnreadable(err.Error()), []string{say.SendAgain()}}
}

// readEncoded reads a form without a file.
func readEncoded(body io.Reader) ([]input, error) {
	data, err := io.ReadAll(body)
	if err != nil {
		return nil, broken(err)
	}
	var inputs []input
	for pair := range strings.SplitSeq(string(data), "&") {
		if pair == "" {
			continue
		}
		if len(inputs) == maxInputs {
			return nil, errTooMany
		}
		name, value, _ := strings.Cut(pair, "=")
		if name, err = url.QueryUnescape(name); err != nil {
			return nil, broken(err)
		}
		if value, err = url.QueryUnescape(value); err != nil {
			return nil, broken(err)
		}
		inputs = append(inputs, input{name, value})
	}
	return inputs, nil
}

// readMultipart reads a form that may hold a file. It reads part by part: the
// ready-made reader stops at a thousand parts, and a long curve has more.
func readMultipart(body io.Reader, boundary string) ([]input, *postedFile, error) {
	if boundary == "" {
		return nil, nil, refusal{http.StatusBadRequest, say.FormWithoutBoundary(), nil}
	}
	parts := multipart.NewReader(body, boundary)
	var inputs []input
	var file *postedFile
	for {
		part, err := parts.NextPart()
		if err == io.EOF {
			return inputs, file, nil
		}
		if err != nil {
			return nil, nil, broken(err)
		}
		if len(inputs) == maxInputs {
			return nil, nil, errTooMany
		}
		data, err := io.ReadAll(part)
		if err != nil {
			return nil, nil, broken(err)
		}
		switch {
		case part.FormName() != page.NameFile:
			inputs = append(inputs, input{part.FormName(), string(data)})
		case part.FileName() != "":
			file = &postedFile{part.FileName(), data}
		}
	}
}
