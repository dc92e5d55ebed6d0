package page

//go:generate go tool templ generate
