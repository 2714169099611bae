package web

import (
	"context"
	"fmt"
	"io"
	"net/http"
	"net/http/httptest"
	"net/url"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"dryfit/internal/store"
	"dryfit/internal/text"
)

// crowd is people with one room open over loopback: some read its pages, some change each a reading of their own.
type crowd struct {
	readers, pages int // and how many pages each reads
	writers, edits int
	rest, think    time.Duration // from a reader's page to its next, from a writer's edit to its next; 0: without a pause
}

// lines of the tape that the writers change, with readings that lie a sixteenth of an inch apart.
var tapes = []struct {
	line   string
	values [3]string
}{
	{"P-A", [3]string{"58-1/4", "58-3/8", "58-5/16"}}, {"P-B", [3]string{"64-7/8", "65", "64-15/16"}}, {"P-C", [3]string{"62-7/16", "62-9/16", "62-1/2"}},
	{"P-D", [3]string{"55-1/16", "55-3/16", "55-1/8"}}, {"A-C", [3]string{"120-1/8", "120-1/4", "120-3/16"}},
}

// The pages that are read in turn.
var readPages = []string{"measure", "layout", "measure", "history", "measure", "source", "measure", "cut", "measure", "layout?face=basin+wall"}

// visited is what the crowd met: how long each page took, and what went wrong.
type visited struct {
	mu    sync.Mutex
	took  map[string][]time.Duration
	wrong []string
}

func (v *visited) page(name string, took time.Duration) {
	v.mu.Lock()
	defer v.mu.Unlock()
	v.took[name] = append(v.took[name], took)
}

func (v *visited) fail(format string, args ...any) {
	v.mu.Lock()
	defer v.mu.Unlock()
	v.wrong = append(v.wrong, fmt.Sprintf(format, args...))
}

// come lets the crowd do all that it has to do.
func (c crowd) come(s *site, round int) *visited {
	s.Helper()
	server := httptest.NewServer(s.http)
	defer server.Close()
	client := &http.Client{Transport: &http.Transport{MaxIdleConnsPerHost: c.readers + c.writers},
		CheckRedirect: func(*http.Request, []*http.Request) error { return http.ErrUseLastResponse }}
	defer client.CloseIdleConnections()
	v := &visited{took: map[string][]time.Duration{}}
	var all sync.WaitGroup
	for i := range c.readers {
		all.Go(func() {
			pace := paced(c.rest, i, c.readers)
			for n := range c.pages {
				pace()
				read(client, server.URL, readPages[(i+n)%len(readPages)], v)
			}
		})
	}
	for i := range c.writers {
		all.Go(func() {
			pace := paced(c.think, i, c.writers)
			for n := range c.edits {
				pace()
				c.write(client, server.URL, i, round*c.edits+n, v)
			}
		})
	}
	all.Wait()
	return v
}

// paced waits for the beats of one of so many people, who do not all begin at once. Only benchmarks wait.
func paced(beat time.Duration, who, of int) func() {
	next := time.Now().Add(beat * time.Duration(who) / time.Duration(of))
	return func() {
		if beat > 0 {
			time.Sleep(time.Until(next))
			next = next.Add(beat)
		}
	}
}

func read(client *http.Client, base, page string, v *visited) {
	begin := time.Now()
	answer, err := client.Get(base + "/room/1/" + page)
	if err != nil {
		v.fail("%s: %v", page, err)
		return
	}
	defer answer.Body.Close()
	body, err := io.ReadAll(answer.Body)
	if err != nil || answer.StatusCode != 200 || !strings.HasSuffix(strings.TrimSpace(string(body)), "</html>") {
		v.fail("%s: %d, %d bytes, %v", page, answer.StatusCode, len(body), err)
		return
	}
	name, _, _ := strings.Cut(page, "?")
	v.page(name, time.Since(begin))
}

// write changes a writer's own reading, as its page does.
func (c crowd) write(client *http.Client, base string, writer, n int, v *visited) {
	tape := tapes[writer%len(tapes)]
	begin := time.Now()
	answer, err := client.PostForm(base+"/room/1/edit", url.Values{"back": {"/room/1/measure"}, "client": {fmt.Sprint("phone ", writer)}, "seq": {fmt.Sprint(n + 1)},
		`set:["survey","tape","` + tape.line + `"]`: {tape.values[n%3]}})
	if err != nil {
		v.fail("edit %d of %d: %v", n, writer, err)
		return
	}
	defer answer.Body.Close()
	if answer.StatusCode != http.StatusSeeOther {
		said, err := io.ReadAll(answer.Body)
		v.fail("edit %d of %d: %d %.300s %v", n, writer, answer.StatusCode, said, err)
		return
	}
	v.page("edit", time.Since(begin))
}

// kept holds the history against what was acknowledged: each edit is one revision, and each revision changes what its
// edit says and nothing else, so that no edit took another's back.
func (c crowd) kept(s *site, rounds int) {
	s.Helper()
	ctx := context.Background()
	said := map[int64]int{} // the writer, by revision
	value := map[int64]string{}
	for writer := range c.writers {
		for n := range c.edits * rounds {
			r, found, err := s.store.Delivered(ctx, 1, store.Delivery{Client: fmt.Sprint("phone ", writer), Seq: int64(n + 1)})
			if err != nil || !found {
				s.Fatalf("edit %d of writer %d is lost: %v", n, writer, err)
			}
			said[r.Number], value[r.Number] = writer, tapes[writer%len(tapes)].values[n%3]
		}
	}
	all, err := s.store.Range(ctx, 1, 1, 1<<40)
	if err != nil || len(all) != 1+c.writers*c.edits*rounds {
		s.Fatalf("%d revisions after %d edits: %v", len(all), c.writers*c.edits*rounds, err)
	}
	state := tapeOf(all[0].Text)
	for _, r := range all[1:] {
		state[tapes[said[r.Number]%len(tapes)].line] = value[r.Number]
		if got := tapeOf(r.Text); fmt.Sprint(got) != fmt.Sprint(state) {
			s.Fatalf("revision %d has %v, want %v", r.Number, got, state)
		}
	}
}

func tapeOf(document []byte) map[string]string {
	tree, _ := text.Parse(document)
	out := map[string]string{}
	for _, e := range text.At(tree, []string{"survey", "tape"}).Entries {
		out[e.Key] = text.Flow(e.Value)
	}
	return out
}

// 50 read and 5 write at the same time: every page comes, every edit is kept.
func TestManyPeopleInOneRoom(t *testing.T) {
	c := crowd{readers: 50, pages: 4, writers: 5, edits: 4}
	if testing.Short() {
		c = crowd{readers: 10, pages: 2, writers: 5, edits: 2}
	}
	s := open(t, nil)
	v := c.come(s, 0)
	for _, w := range v.wrong {
		t.Error(w)
	}
	c.kept(s, 1)
}

// 50 read a page a second each and 5 edit every three seconds each, for 30 seconds: 1500 pages, 50 edits.
func BenchmarkManyPeopleInOneRoom(b *testing.B) {
	benchCrowd(b, crowd{readers: 50, pages: 30, writers: 5, edits: 10, rest: time.Second, think: 3 * time.Second})
}

// The same people without a pause between their requests: how much comes out when more is asked for than can be done.
func BenchmarkCrowdWithoutAPause(b *testing.B) {
	benchCrowd(b, crowd{readers: 50, pages: 10, writers: 5, edits: 4})
}

func benchCrowd(b *testing.B, c crowd) {
	s := open(b, nil)
	var all []time.Duration
	by := map[string][]time.Duration{}
	rounds := 0
	for b.Loop() {
		v := c.come(s, rounds)
		rounds++
		for _, w := range v.wrong {
			b.Error(w)
		}
		for name, took := range v.took {
			by[name] = append(by[name], took...)
			if name != "edit" {
				all = append(all, took...)
			}
		}
	}
	c.kept(s, rounds)
	b.ReportMetric(part(all, 50), "ms-median-page")
	b.ReportMetric(part(all, 95), "ms-95th-page")
	b.ReportMetric(part(by["edit"], 50), "ms-median-edit")
	b.ReportMetric(float64(len(all))/b.Elapsed().Seconds(), "pages/s")
	for name, took := range by {
		b.Logf("%-8s %5d: median %.1f ms, 95th %.1f ms", name, len(took), part(took, 50), part(took, 95))
	}
}

// part is the time, in milliseconds, within which so many in a hundred were answered.
func part(took []time.Duration, in100 int) float64 {
	slices.Sort(took)
	return float64(took[(len(took)-1)*in100/100].Microseconds()) / 1000
}

// BenchmarkPage is one page for one person, its plan made already.
func BenchmarkPage(b *testing.B) {
	for _, page := range []string{"measure", "layout", "cut", "book", "photos", "source", "history"} {
		b.Run(page, func(b *testing.B) {
			s := open(b, nil)
			s.get("/room/1/" + page)
			for b.Loop() {
				s.get("/room/1/" + page)
			}
		})
	}
}

// BenchmarkFreshPage is one page after each edit, so that its plan is made anew.
func BenchmarkFreshPage(b *testing.B) {
	for _, page := range []string{"measure", "layout", "cut"} {
		b.Run(page, func(b *testing.B) {
			s := open(b, nil)
			for n := 0; b.Loop(); n++ {
				b.StopTimer()
				s.post("/room/1/edit", "back", "/room/1/measure", `set:["name"]`, fmt.Sprint("room ", n))
				b.StartTimer()
				s.get("/room/1/" + page)
			}
		})
	}
}

// BenchmarkFirstPage is from an empty folder to the first page: the folder is made, the demo rooms are put in.
func BenchmarkFirstPage(b *testing.B) {
	for b.Loop() {
		open(b, nil).get("/")
	}
}
