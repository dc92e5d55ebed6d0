// Package web serves the bench to the user's own browser: it reads forms and
// files, asks package press, and hands the answer to a page.
package web
