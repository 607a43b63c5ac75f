using System.Collections.Immutable;
using TrimOut.Core;
using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Units;
using TrimOut.Screens.Frames;
using TrimOut.Screens.Sheets;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Punch;

/// <summary>Keys of the punch list.</summary>
internal static class PunchKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<PunchScreen>("enter", "Fix", "Goes to the field that fixes it, or asks what to do with something that one laptop removed.", Mend)
            { Disabled = Nothing },
        new KeyAction<PunchScreen>("a", "Waive",
            "Passes the finding, or all that are picked, with one reason and initials; other figures of one reopen that one.",
            (s, context) => Transition.Type(s, Reason(s, context)))
            { Disabled = CannotWaive },
        new KeyAction<PunchScreen>("v", "Pick", "Picks the finding, to be waived together with others, or no longer; then the next row.",
            (s, context) => new Transition(s with
            {
                Picked = s.Picked.SymmetricExcept([PickedFinding.Of(s.Current(context)!.Finding!)]),
                Selected = Paging.Move(s.Selected, 1, PunchRows.Of(s, context).Count),
            }))
            { Disabled = CannotPick, OnBar = false },
        new KeyAction<PunchScreen>("V", "Pick all shown", "Picks every open finding that is shown, or none where all are picked.",
            (s, context) => new Transition(Picking(s, context, _ => true))) { OnBar = false },
        new KeyAction<PunchScreen>("&", "Pick alike", "Picks every open finding that is shown of the same check, or none of them where all are picked.",
            (s, context) => new Transition(Picking(s, context, f => f.Check.Id == s.Current(context)!.Finding!.Check.Id)))
            { Disabled = CannotPick, OnBar = false },
        new KeyAction<PunchScreen>("space", "Done", "Says that a written item was fixed, or opens it again.",
            (s, context) => Transition.Save(s, PunchList.Toggle(s.Current(context)!.Item!)))
            { Disabled = (s, context) => s.Current(context)?.Item is null ? "A finding goes away by itself when its cause does." : null },
        new KeyAction<PunchScreen>("n", "New item", "Writes an item by hand.", (s, context) => Transition.Type(s, Write(s, context))),
        new KeyAction<PunchScreen>("o", "Open only", "Shows open ones only, or waived and done ones too.",
            (s, context) => new Transition((s with { Closed = !s.Closed }).Fit(context))),
        new KeyAction<PunchScreen>("right", "Next phase", "Shows only what belongs to the next phase; after the last one, everything.",
            (s, context) => new Transition((s with { Only = s.Only is null ? Phase.WalkThrough : s.Only == Phase.Handover ? null : s.Only + 1 }).Fit(context)))
            { OnBar = false, Also = ["]"] },
        new KeyAction<PunchScreen>("left", "Phase before", "Shows only what belongs to the phase before; before the first one, everything.",
            (s, context) => new Transition((s with { Only = s.Only is null ? Phase.Handover : s.Only == Phase.WalkThrough ? null : s.Only - 1 }).Fit(context)))
            { OnBar = false, Also = ["["] },
        new KeyAction<PunchScreen>("delete", "Take waiver back", "Opens a waived finding again.",
            (s, context) => Transition.Save(s, RemoveItems.Remove(context.House, s.Current(context)!.Finding!.Waiver!.Item)))
            { Disabled = (s, context) => s.Current(context)?.Finding?.Waiver is null ? "This is not waived." : null, Also = ["backspace"], OnBar = false },
        Filtering.Key<PunchScreen>("items", "tag, phase, or what it says"),
        .. Moves.Through<PunchScreen>("item", (s, context, by) => s with { Selected = Paging.Move(s.Selected, by, PunchRows.Of(s, context).Count) }),
    ];

    private static string? CannotWaive(PunchScreen s, ScreenContext context) =>
        s.ToWaive(context) is { Count: > 1 } ? null
        : s.ToWaive(context) is not [var finding] ? "Only a finding is waived. Space marks a written item done."
        : IsRemoval(finding) ? "This is not waived but decided: Enter asks."
        : finding.Open ? null
        : "It is waived already. Del takes the waiver back.";

    private static string? CannotPick(PunchScreen s, ScreenContext context) =>
        s.Current(context)?.Finding is not { Open: true } finding ? "Only an open finding is picked, to be waived with others."
        : IsRemoval(finding) ? "This is not waived but decided: Enter asks." : null;

    /// <summary>With all such findings picked too, or without them where all are picked.</summary>
    private static PunchScreen Picking(PunchScreen s, ScreenContext context, Func<Finding, bool> such)
    {
        var shown = PunchRows.Of(s, context).Select(r => r.Finding).OfType<Finding>().Where(f => f.Open && !IsRemoval(f) && such(f))
            .Select(PickedFinding.Of).ToImmutableHashSet();
        return s with { Picked = shown.IsSubsetOf(s.Picked) ? s.Picked.Except(shown) : s.Picked.Union(shown) };
    }

    private static string? Nothing(PunchScreen s, ScreenContext context) => s.Current(context) is null ? "Nothing is open here." : null;

    private static Transition Mend(PunchScreen s, ScreenContext context)
    {
        var row = s.Current(context)!;
        if (row.FillIn is { } field)
            return Transition.Open(s, MendedAt.Of(context, field));
        if (row.Finding is { } removal && IsRemoval(removal))
            return Transition.Type(s, Removed(s, context, row.Subject));
        if (row.Item is { } written)
            return Transition.Open(s, SheetScreen.OfWritten(written));
        return Transition.Open(s, row.Finding is { } finding
            ? MendedAt.Of(context, finding.Found.Mends)
            : SheetScreen.At(SheetOf.Holding(context.House, row.Subject), context.House));
    }

    private static bool IsRemoval(Finding finding) => finding.Found.Mends.Field == Item.RemovedField;

    private static Entry Removed(PunchScreen s, ScreenContext context, Item item)
    {
        var (back, away) = item.Removed ? ("bring it back", "leave it removed") : ("leave it in", "remove it again");
        return new Entry(context.House.NameOf(item), back, $"{back} with all it had, or {away}: Up and Down choose, Enter takes it", (text, now) =>
            text.Trim() != back && text.Trim() != away ? new Refusal($"Choose: {back}, or {away}.")
            : RemovedAtWork.All(now.House).FirstOrDefault(r => r.Item.Id == item.Id) is { } removal
                ? RemoveItems.Settle(now.House, removal, text.Trim() == back).Then<Transition>(d => Transition.Save(s, d))
            : new Refusal("That was decided meanwhile."))
        {
            Options = [new Option(back, back), new Option(away, away)],
        };
    }

    private static Entry Reason(PunchScreen s, ScreenContext context) => new("Waived because", "", s.ToWaive(context) is { Count: > 1 } several
        ? $"the reason, one for all {NumberText.Plain(several.Count)}, for whoever reads the binder" : "the reason, for whoever reads the binder",
        (reason, context) => reason.Trim().Length == 0 ? new Refusal("A waiver needs a reason.")
            : Reasons.Take(reason, why => WaiverFacts.Reason.ReadTyped(why, context.House).Then<Transition>(_ => Transition.Type(s, Initials(s, why)))));

    private static Entry Initials(PunchScreen s, string reason) => new("Your initials", "", "up to six letters",
        (initials, context) => s.ToWaive(context) is { Count: > 0 } findings
            ? PunchList.Waive(findings, context.House, reason, initials).Then<Transition>(d => Transition.Save(s with { Picked = [] }, d))
            : new Refusal("That finding is gone."));

    private static Entry Write(PunchScreen s, ScreenContext context) => new("To fix", "", "tag: what is wrong, such as W03: fascia scratched",
        (text, now) =>
        {
            var colon = text.IndexOf(':', StringComparison.Ordinal);
            var tag = colon > 0 ? text[..colon].Trim() : "";
            var unit = now.House.Units.FirstOrDefault(u => SameName.Comparer.Equals(u.Tag, tag));
            var phase = s.Only ?? (unit is null ? Phase.Handover : Progress.Current(unit, context.Steps) ?? Phase.Handover);
            return PunchList.Write(now.House, unit?.Item ?? now.House.Job, unit is null ? text : text[(colon + 1)..], phase)
                .Then<Transition>(d => Transition.Save(s, d));
        });
}
