package page

// A ProgramsPage tells other programs what they can ask.
type ProgramsPage struct {
	Assets    Assets
	Server    string // its address
	Addresses []ProgramAddress
	Files     []ProgramFile // that the examples send, beside a plan
	Plan      string        // the command that names the plan for the rest of them
	Examples  []ProgramExample
}

// A ProgramFile is a file that the examples send.
type ProgramFile struct{ Name, Text string }

// A ProgramAddress is what one address does, and the statuses that it gives.
type ProgramAddress struct{ Method, Path, Does, Gives string }

// A ProgramExample is a command and what its answer shows.
type ProgramExample struct {
	Title, Command string
	Shows          []string
	First          bool
}
