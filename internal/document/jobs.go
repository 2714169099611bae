package document

import (
	"slices"
	"strconv"
	"strings"

	"dryfit/internal/text"
)

// Jobs have names that a plan gives them: "set basin wall 1". Those that a document says (what is done, what comes after what, who does what)
// follow when the wall or the thing is called otherwise. Which jobs there are only the schedule knows, so here stands what their words are.

// jobWords is the first words of a kind of job, and the kinds of thing that it is done on.
type jobWords struct {
	says string
	on   []string
}

var onFaces = []string{"wall", "opening"}

// jobsOn lists the kinds of job that are named by what they are done on.
var jobsOn = []jobWords{
	{"board", onFaces}, {"prime", onFaces}, {"membrane", onFaces}, {"flood test", onFaces}, {"dry-lay", onFaces}, {"set", onFaces}, {"clips", onFaces},
	{"pre-seal", onFaces}, {"grout", onFaces}, {"clean", onFaces}, {"seal", onFaces},
	{"build cabinet", []string{"cabinet"}}, {"glue up", []string{"top"}}, {"scribe", []string{"top"}}, {"cut-outs", []string{"top"}},
	{"coat", []string{"cabinet", "top"}}, {"install", []string{"cabinet", "top"}},
	{"WC", []string{"WC"}}, {"basin", []string{"basin"}}, {"tap", []string{"tap"}}, {"trim", []string{"trim"}}, {"ledger", []string{"trim"}},
	{"mirror", []string{"fitting"}}, {"fix", []string{"fitting"}},
}

// againWords begin the name of a job that makes up for another one whose time was missed: "sand before coat vanity 2".
var againWords = []string{"sand before ", "prime before "}

// JobNamed reports whether a job of a kind is named by what it is done on, and so followed when that is renamed.
func JobNamed(kind string) bool {
	return slices.ContainsFunc(jobsOn, func(j jobWords) bool { return j.says == kind })
}

// JobName is a job's name: its kind and what it is done on, unless that says the kind already.
func JobName(kind, subject string) string {
	if subject == "" || SameName(subject, kind) {
		return kind
	}
	return kind + " " + subject
}

// SameName reports whether two names of jobs are the same to a reader: blanks and capitals do not count.
func SameName(a, b string) bool {
	return strings.EqualFold(strings.Join(strings.Fields(a), " "), strings.Join(strings.Fields(b), " "))
}

// jobs gives the operations that make jobs on the renamed thing, or a job of the user's own, say the new name.
func (n renaming) jobs(tree *text.Node, names map[string][]string) []Op {
	var ops []Op
	for _, s := range jobSpots(tree) {
		now, mine := n.job(s.typed, names)
		switch {
		case !mine || now == s.typed:
		case s.key:
			ops = append(ops, Op{Do: text.Rename, Path: s.path, Value: now})
		default:
			ops = append(ops, Op{Do: text.Set, Path: s.path, Value: text.Typed(now)})
		}
	}
	return ops
}

// job is what a job is called after the renaming; false where it is none on the renamed thing.
func (n renaming) job(name string, names map[string][]string) (now string, mine bool) {
	own := slices.ContainsFunc(names["job"], func(j string) bool { return SameName(j, name) })
	if n.kinds[0] == "job" {
		return n.new, SameName(n.old, name)
	}
	if own {
		return name, false
	}
	for _, again := range againWords {
		if rest, ok := strings.CutPrefix(name, again); ok {
			now, mine = n.job(rest, names)
			return again + now, mine
		}
	}
	for _, j := range jobsOn {
		if slices.Contains(j.on, n.kinds[0]) && bearers(j.on, n.old, names) == 1 {
			if now, mine = n.jobOf(j, name, names); mine {
				return now, true
			}
		}
	}
	return name, false
}

// jobOf tries one kind of job, with the number of a part behind it or without.
func (n renaming) jobOf(j jobWords, name string, names map[string][]string) (string, bool) {
	if SameName(name, JobName(j.says, n.old)) {
		return JobName(j.says, n.new), true
	}
	at := strings.LastIndexByte(name, ' ')
	if at < 0 {
		return name, false
	}
	part := name[at+1:]
	if _, err := strconv.Atoi(part); err != nil || bearers(j.on, n.old+" "+part, names) > 0 {
		return name, false
	}
	return JobName(j.says, n.new) + " " + part, SameName(name[:at], JobName(j.says, n.old))
}

// bearers counts the things of some kinds that have a name.
func bearers(kinds []string, name string, names map[string][]string) (count int) {
	for _, k := range kinds {
		for _, have := range names[k] {
			if SameName(have, name) {
				count++
			}
		}
	}
	return count
}

// jobSpots lists every place where the name of a job stands.
func jobSpots(tree *text.Node) []spot {
	var all []spot
	days := tree.Get("days")
	if days == nil {
		return nil
	}
	if done := days.Get("done"); done != nil {
		for _, e := range done.Entries {
			all = append(all, spot{[]string{"days", "done", e.Key}, true, e.Key})
		}
	}
	for _, c := range []struct{ of, key string }{{"jobs", "after"}, {"jobs", "before"}, {"promises", "after"}, {"promises", "before"}, {"hands", "does"}, {"hired", "for"}} {
		group := days.Get(c.of)
		if group == nil {
			continue
		}
		for _, e := range group.Entries {
			if list := e.Value.Get(c.key); list != nil {
				all = append(all, namesAt(list, []string{"days", c.of, e.Key, c.key})...)
			}
		}
	}
	return all
}

// namesAt lists the single names of a list, or the one that stands for it.
func namesAt(n *text.Node, path []string) []spot {
	if n.Kind == text.Scalar {
		return []spot{{path, false, strings.TrimSpace(n.Text)}}
	}
	var all []spot
	for i, c := range n.Items {
		if c.Kind == text.Scalar {
			all = append(all, spot{append(slices.Clone(path), text.Item(i)), false, strings.TrimSpace(c.Text)})
		}
	}
	return all
}
