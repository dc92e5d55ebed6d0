package page

const glossary = "Glossary"

// shelfLinks are the pages that belong to no plan.
var shelfLinks = []Link{{Address: "/", Text: "Plans"}, {Address: "/rams", Text: "Rams"}, {Address: "/people", Text: "People"}}

// besideLinks are the pages beside the bench of the plan at an address.
func besideLinks(address string) []Link {
	return []Link{
		{Address: address + "/faults", Text: "Faults"},
		{Address: address + "/shares", Text: "Shares"},
		{Address: address + "/sheet", Text: "Sheet"},
		{Address: address + "/proving", Text: "Proving"},
		{Address: address + "/drill", Text: "Drill"},
		{Address: address + "/history", Text: "History"},
		{Address: address + "/revisions", Text: "Revisions"},
	}
}
