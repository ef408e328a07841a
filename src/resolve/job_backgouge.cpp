// The groove gouged into the root from the back before the second side is welded: as stated, else from the rate book.
#include <fmt/format.h>

#include "resolve/job_draft.hpp"
#include "resolve/shown.hpp"

namespace seambook {
namespace {

/// Welds through or into the members' thickness, that have a root to gouge.
bool has_root_to_gouge(WeldKind weld) { return weld != WeldKind::fillet && weld != WeldKind::edge; }

Known<dim::length> stated_or_from_book(JobDraft& draft, const BackgougeText& text, const Maybe<dim::length>& written,
                                       Known<dim::length> in_book, std::string_view what) {
  if (written) return stated(draft, written);
  if (given(in_book)) {
    assume(draft,
           fmt::format("{} of the gouged groove {} from the rate book", what, length_shown(draft, in_book.si.value)));
  } else {
    refuse_lack(draft, text.place, fmt::format("the gouged groove has no {}", what),
                fmt::format("state {{depth: 4 mm, width: 8 mm}} here, or '{}' in the rate book's gouging", what));
  }
  return in_book;
}

/// A gouged weld states the groove itself; only the work is asked for.
void take_own_groove(JobDraft& draft, const BackgougeText& written, Joint& joint) {
  joint.own_groove_gouged = true;
  if (!written.depth && !written.width) return;
  draft.diagnostics.error(written.place, "a gouged weld states depth and width of its groove itself",
                          "write 'backgouge: true' to charge the gouging");
}

}  // namespace

void resolve_backgouge(JobDraft& draft, const JointText& text, Joint& joint) {
  if (!text.backgouge || !text.backgouge->wanted) return;
  const BackgougeText& written = *text.backgouge;
  if (!has_root_to_gouge(joint.weld))
    return draft.diagnostics.error(
        written.place, fmt::format("'backgouge' does not apply to a weld of kind {}", weld_word(joint.weld)));
  if (!draft.book.gouging)
    return draft.diagnostics.error(written.place, "the rate book does not say what gouging takes",
                                   "add 'gouging' with depth, width, time and carbons");
  if (joint.weld == WeldKind::gouged) return take_own_groove(draft, written, joint);
  const Gouging& book = *draft.book.gouging;
  joint.gouge_depth = stated_or_from_book(draft, written, written.depth, book.depth, "depth");
  joint.gouge_width = stated_or_from_book(draft, written, written.width, book.width, "width");
  // Bound to each other.
  for (const Known<dim::length>& bound : {joint.gouge_depth, joint.thickness, joint.thickness_second})
    freeze(draft, bound.si);
  if (!given(joint.thickness) || joint.gouge_depth.si.value < thinner_member(joint).si) return;
  const bool by_job = written.depth.has_value();
  draft.diagnostics.error(
      by_job ? written.depth->place : written.place,
      fmt::format("a groove {} deep goes through {}", length_shown(draft, joint.gouge_depth.si.value),
                  length_shown(draft, thinner_member(joint))),
      "state a depth below the thickness");
}

}  // namespace seambook
