package proving

// Judge holds a plan against one study, without what the studies say together.
var Judge = judge
