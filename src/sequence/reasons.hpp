// Why each operation stands where it does, in words, from facts of the finished order: what changed, what stayed, which
// work of the previous set-up is left and what it waits for, and which direction of a change costs more.
#pragma once

#include "sequence/sequence.hpp"

namespace seambook {

/// Fills in the reason of every step. Requires: the steps hold every operation once, in an order that respects
/// precedence.
void give_reasons(const SequenceProblem&, Sequence&);

}  // namespace seambook
