using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Units;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks.Cables;

/// <summary>Some box holds the longest run of its cable whole.</summary>
/// <remarks>
/// <para>Why: there is cable enough in all, and the last run would need a joint in the wall.</para>
/// <para>To clear: bring a box that holds it. Whether all runs can be cut from the boxes is the cut plan's to say.</para>
/// </remarks>
public sealed class NoBoxLongEnough() : Check<CableType>(Subjects.Of(ItemKind.CableType, (house, item) => new CableType(house, item)))
{
    private static readonly Message TooLong = new("{0} needs {1} in one piece; the most that is left in a box is {2}.");
    private static readonly Message BringBox = new("Bring a box with {0} or more: a run has no splice.");

    /// <inheritdoc/>
    public override CheckInfo Info { get; } = new("no-box-long-enough", "No box holds the longest run", Severity.Caution, Phase.RoughIn,
        new Source(Source.CommonPractice, "most that is left in a box >= longest run still to be pulled: legs x (1 + allowance) + both tails"));

    /// <inheritdoc/>
    public override Outcome Judge(CableType subject)
    {
        var boxes = subject.House.Boxes.Where(b => b.Item.Get(BoxFacts.Cable)?.Id == subject.Id).ToList();
        // No further than it takes: this is asked again after every length that somebody types.
        var needs = subject.House.Look(Lookups.NeedsOfCable, subject.Id);
        if (boxes.Count == 0 || !ToPull(needs).Any())
            return new Outcome.DoesNotApply();
        if (boxes.FirstOrDefault(b => b.Left is null) is { } box)
            return NotChecked.Of(box, BoxFacts.Left);
        var most = boxes.Max(b => b.Left!.Value);
        var tooLong = ToPull(needs.Where(n => n.Needed > most)).ToList();
        if (tooLong.Count > 0)
        {
            var (longest, needed) = tooLong.MaxBy(r => r.Needed);
            return new Outcome.Found(
                TooLong.With(Arg.Of(tooLong.Select(r => Arg.Name(r.Run)), Arg.Name(longest)), Arg.Whole(needed!.Value), Arg.Run(most)),
                BringBox.With(Arg.Whole(needed.Value)),
                FieldRef.To(boxes[0].Item, BoxFacts.Left));
        }
        return ToPull(needs.Where(n => n.Needed is null)).FirstOrDefault().Run is { } open
            ? RunFigures.UnknownLength(open) ?? NotChecked.Of(open.Unit.Window, WindowFacts.RoughWidth)
            : new Outcome.Fine();

        IEnumerable<(HomeRun Run, Length? Needed)> ToPull(IEnumerable<(string Unit, Length? Needed)> of) =>
            of.Select(n => (Run: subject.House.FindUnit(n.Unit)!.Run!, n.Needed)).Where(r => !HouseCuts.IsPulled(r.Run));
    }
}
