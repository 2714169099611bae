// Package cure tells how long a cement product must wait in a room that is colder than its label supposes.
//
// A label says "24 h at 70 °F". Cement hardens by a reaction whose speed depends on temperature, so what counts is the
// equivalent age: the time at the label's temperature that has the same effect as the time that has passed. The forms are two
// after ASTM C1074: Arrhenius (by an activation energy; from memory) and Nurse-Saul (by a datum temperature); and that of Eurocode 2.
//
// Only longer: a warm room never makes a wait shorter than the label's, since what dries, cools or shrinks does not
// follow the reaction. Only cement: membranes, wood glue, varnish and silicone keep what their label says.
//
// Temperatures and times go in and come out as whole numbers; a speed is rounded once to a millionth, half up.
package cure
