package cli_test

import (
	"fmt"
	"io"
	"net/http"
	"os"
	"strings"
)

// ask is a browser of one request, which a test starts where the test itself can not be: METHOD ADDRESS PASS HOST FORM,
// each of the last three empty for none. It prints the status and the page.
func ask() {
	status, page, err := asked(os.Args[1], os.Args[2], os.Args[3], os.Args[4], os.Args[5])
	if err != nil {
		fmt.Println(err)
		os.Exit(1)
	}
	fmt.Printf("%d\n%s", status, page)
}

func asked(method, address, pass, host, form string) (status int, page []byte, err error) {
	r, err := http.NewRequest(method, address, strings.NewReader(form))
	if err != nil {
		return 0, nil, err
	}
	if form != "" {
		r.Header.Set("Content-Type", "application/x-www-form-urlencoded")
	}
	if pass != "" {
		r.AddCookie(&http.Cookie{Name: "dryfit-pass", Value: pass})
	}
	if host != "" {
		r.Host = host
	}
	answer, err := http.DefaultTransport.RoundTrip(r) // which follows no link
	if err != nil {
		return 0, nil, err
	}
	defer answer.Body.Close()
	page, err = io.ReadAll(answer.Body)
	for _, c := range answer.Cookies() {
		page = append([]byte(c.Name+"="+c.Value+"\n"), page...)
	}
	return answer.StatusCode, page, err
}
