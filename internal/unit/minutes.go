package unit

import "strconv"

// Minutes is a length of time, or a time of day counted from midnight.
type Minutes int64

const (
	Hour Minutes = 60
	Day  Minutes = 24 * Hour
)

// String words a length of time: "45 min", "3 h 30 min", "24 h"; from two days on in days and hours: "3 days 4 h".
func (m Minutes) String() string {
	switch {
	case m < 0:
		return "-" + (-m).String()
	case m < Hour:
		return strconv.FormatInt(int64(m), 10) + " min"
	case m < 2*Day:
		return joinTime(count(m/Hour, "h"), m%Hour)
	}
	return joinTime(count(m/Day, "days"), m%Day)
}

func joinTime(head string, rest Minutes) string {
	if rest == 0 {
		return head
	}
	return head + " " + rest.String()
}

func count(n Minutes, what string) string { return strconv.FormatInt(int64(n), 10) + " " + what }

// Hours words a length of time in hours to a tenth, half up: "38 h", "2.5 h".
func (m Minutes) Hours() string { return tenths(int64(m)*1000/int64(Hour)) + " h" }
