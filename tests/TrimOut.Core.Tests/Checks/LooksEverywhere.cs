using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Tests.Checks;

/// <summary>A check as a newcomer might write it by the recipe: about a unit, and looking at whatever else there is in the house in every way there
/// is.</summary>
internal sealed class LooksEverywhere : UnitCheck
{
    private static readonly Message Seen = new("{0}");

    public override CheckInfo Info { get; } =
        new("looks-everywhere", "Looks at everything", Severity.Note, Phase.WalkThrough, new Source(Source.CommonPractice, "none"));

    public override Outcome Judge(Unit subject)
    {
        var house = subject.House;
        string?[] seen =
        [
            // Fabrics within a room, as in the case that showed that a re-check could be stale.
            .. house.Units.Where(u => u.Window.RoomId == subject.Window.RoomId).Select(u => u.Item.Get(UnitFacts.Fabric)),
            string.Join(",", house.Rooms.Select(r => r.Id)),
            string.Join(",", house.ItemsOf(ItemKind.Punch).Select(i => i.Id)),
            string.Join(",", house.Under(subject.Id, ItemKind.Punch).Select(i => i.Id)),
            string.Join(",", subject.Item.Fields.Select(f => f.Key)),
            string.Join(",", house.Remotes.SelectMany(r => r.Item.All(RemoteFacts.Moves)).Select(m => m.Key)),
            .. Enumerable.Range(1, 60).Select(n => house.Find($"deed-{n}-0")?.Kind.ToString()),
            subject.Run?.Panel?.Id,
            house.Panels.FirstOrDefault()?.Type?.Name,
            string.Join(",", subject.Remotes.Select(r => r.Id)),
            house.FindTag("W0002")?.Id,
        ];
        return new Outcome.Found(Seen.With(Arg.Typed(string.Join("|", seen))), Seen.With(Arg.Typed("")), FieldRef.To(subject.Item, UnitFacts.Fabric));
    }
}
