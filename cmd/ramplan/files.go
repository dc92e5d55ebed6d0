package main

import "os"

// put puts data into a file, or on standard output for -, and gives the status.
func (c console) put(name string, data []byte) int {
	var err error
	if name == "-" {
		_, err = c.out.Write(data)
	} else {
		err = os.WriteFile(name, data, 0o644)
	}
	if err != nil {
		c.complain("cannot write %s: %v", name, err)
		return statusRefused
	}
	return statusGood
}
