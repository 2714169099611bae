module dryfit

go 1.26.0

require (
	codeberg.org/go-pdf/fpdf v0.12.0
	github.com/alecthomas/kong v1.17.0
	github.com/go-fonts/liberation v0.3.3
	github.com/peterstace/simplefeatures v0.59.0
	github.com/rogpeppe/go-internal v1.16.0
	github.com/santhosh-tekuri/jsonschema/v6 v6.0.3
	go.yaml.in/yaml/v4 v4.0.0
	golang.org/x/image v0.47.0
	honnef.co/go/tools v0.8.2
	pgregory.net/rapid v1.3.0
)
