// Package memo keeps the last answers of something that takes long and always answers the same question alike.
//
// Takes questions that are plain data; gives the answer that was kept for one that is equal in all its parts, or a fresh one. Rules:
// a question and its answer are not changed once they were asked and given, for the next who asks gets the same.
package memo

import (
	"reflect"
	"slices"
	"sync"
)

// Memo keeps answers A to questions Q. The zero value is ready; nil keeps nothing; many may ask at the same time.
type Memo[Q, A any] struct {
	mu   sync.Mutex
	list []answered[Q, A] // the one asked for last at the end
}

type answered[Q, A any] struct {
	question Q
	answer   A
}

// kept bounds the memory: a room has some ten stocks, and its days are planned a few times over.
const kept = 32

// Of gives the answer to a question, found by solve where it is not kept.
func (m *Memo[Q, A]) Of(q Q, solve func(Q) A) A {
	if m == nil {
		return solve(q)
	}
	if a, ok := m.find(q); ok {
		return a
	}
	a := solve(q)
	m.keep(answered[Q, A]{q, a})
	return a
}

func (m *Memo[Q, A]) find(q Q) (a A, ok bool) {
	m.mu.Lock()
	defer m.mu.Unlock()
	for i, e := range slices.Backward(m.list) {
		if reflect.DeepEqual(e.question, q) {
			m.list = append(slices.Delete(m.list, i, i+1), e)
			return e.answer, true
		}
	}
	return a, false
}

func (m *Memo[Q, A]) keep(e answered[Q, A]) {
	m.mu.Lock()
	defer m.mu.Unlock()
	if len(m.list) >= kept {
		m.list = slices.Delete(m.list, 0, 1)
	}
	m.list = append(m.list, e)
}
