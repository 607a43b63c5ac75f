using CsCheck;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Tests.Checks;

/// <summary>Things that people do to a house, at random: facts typed or taken away, also such as nobody judges by, items added, removed and brought back,
/// changes undone, or undone and done again at once, units that change places, another laptop's work taken in.</summary>
internal static class RandomDeeds
{
    private static readonly string[] Typed =
        ["1", "4", "12", "36", "40 1/2", "0", "left", "right", "yes", "no", "none", "open", "inside", "outside", "panel", "battery", "W0001", "W0002", "Room 0",
            "Room 1", "Roller", "Cellular", "16/2", "18/2", "P0", "P1", "Hub", "Remote 0", "done", "cl2p", "cl2x", "other", "air-handling-space",
            "between-floors", "20 AWG", "1 mm2", "swapped", "2026-03-14", ""];

    /// <summary>Up to a dozen deeds, one after the other.</summary>
    public static Gen<Deed[]> Gen { get; } =
        CsCheck.Gen.Select(CsCheck.Gen.Int[0, 9999], CsCheck.Gen.Int[0, 9999], CsCheck.Gen.Int[0, Typed.Length - 1], CsCheck.Gen.Int[0, 9999], CsCheck.Gen.Bool,
        (at, which, typed, key, aside) => new Deed(at, which, Typed[typed], key, aside)).Array[1, 12];

    /// <summary>One of them.</summary>
    /// <param name="At">Which item.</param>
    /// <param name="Which">Which fact of it, or what else is done.</param>
    /// <param name="Text">What is typed.</param>
    /// <param name="Key">Under which key, where a fact has several.</param>
    /// <param name="Aside">Done beside the value, or without having seen it.</param>
    internal sealed record Deed(int At, int Which, string Text, int Key, bool Aside)
    {
        /// <summary>The history step by step with this deed; the same where it can't be done.</summary>
        public IEnumerable<HouseLog> DoneTo(HouseLog log)
        {
            if (Which % 23 is not (1 or 2))
            {
                yield return Which % 23 == 0 ? Undone(log) : Done(log);
                yield break;
            }
            // Undone and done again: the house is as it was, whether or not anybody looked at it in between.
            var mine = log.Changes.LastOrDefault(c => c.Id.Device is "deed" or "other");
            if (mine is null)
                yield break;
            var undo = Change(log, new Draft("undo", [new Edit.Undo(mine.Id)]), false, "deed");
            var undone = log.With(undo);
            if (Aside)
                yield return undone;
            yield return undone.With(Change(undone, new Draft("redo", [new Edit.Undo(undo.Id)]), false, "deed"));
        }

        private HouseLog Done(HouseLog log)
        {
            if (Draft(log.House, At, Which, Text, Key, Aside) is not { Ok: true } draft)
                return log;
            var change = Change(log, draft.Value, Aside && Which % 3 == 0, Which % 19 == 0 ? "other" : "deed");
            // What another laptop did earlier comes in between.
            return Which % 19 == 0 ? HouseLog.Of(log.Changes.Add(change with { Stamp = Math.Max(1, log.LargestStamp - 2) })).Value : log.With(change);
        }

        private HouseLog Undone(HouseLog log)
        {
            var mine = log.Changes.Where(c => c.Id.Device is "deed" or "other").ToList();
            return mine.Count == 0 ? log : log.With(Change(log, new Draft("undo", [new Edit.Undo(mine[At % mine.Count].Id)]), false, "deed"));
        }
    }

    private static Result<Draft> Draft(House house, int at, int which, string typed, int key, bool aside)
    {
        // The nth item and fact, so that every kind of item and every fact comes up.
        var kinds = house.Items.Values.Where(i => !i.Removed).OrderBy(i => i.Place).ToLookup(i => i.Kind).ToList();
        var items = kinds[at % kinds.Count].ToList();
        var item = items[at % items.Count];
        if (which % 31 == 0)
            return RemoveItems.Remove(house, item);
        if (which % 31 == 1)
            return AddItems.Window(house, AddItems.NextTag(house), null);
        if (which % 31 == 3 && house.Items.Values.FirstOrDefault(i => i.Removed) is { } gone)
            return RemoveItems.BringBack(house, gone);
        if (which % 31 == 4)
            return new Draft("gone").PutStored(item.Id, Item.RemovedField, "deed:1");
        if (which % 31 == 5)
            return Unread(house, item);
        if (which % 31 == 6 && house.Windows.Where(w => w.Units.Length > 1).ToList() is { Count: > 0 } several)
            return Swapped(several[key % several.Count]);
        if (which % 31 == 2)
            return PunchList.Write(house, item, "mend it", Phase.Hang);
        var facts = FactTable.Of(item.Kind);
        var fact = facts[which % facts.Count];
        if (aside && FactTable.IsKit(item.Kind) && !fact.IsKeyed)
            return new Draft("checked").PutStored(item.Id, Companion.Checked(fact.Name), "yes");
        var keyed = fact.Name == "step" ? StepList.All[key % StepList.All.Length].Id : house.Units.Length == 0 ? "x" : house.Units[key % house.Units.Length].Id;
        return SetFact.Typed(house, item, fact, typed, keyed);
    }

    /// <summary>A note, which no check judges by.</summary>
    private static Draft Unread(House house, Item item) => FactTable.Find(item.Kind, "note") is { } note
        ? new Draft("note").PutStored(item.Id, note.Name, "ladder")
        : new Draft("contact").Put(House.RootId, HouseFacts.SiteContact, "the neighbor");

    private static Draft Swapped(Window window) => new Draft("swap")
        .Put(window.Units[0].Id, UnitFacts.Position, 2).Put(window.Units[1].Id, UnitFacts.Position, 1);

    /// <summary>The change as a laptop makes it that has seen all there is, or one that has seen nothing of the values: then both stay.</summary>
    private static Change Change(HouseLog log, Draft draft, bool unseen, string device)
    {
        var id = new ChangeId(device, log.Changes.Count + 1);
        return new Change(id, log.LargestStamp + 1, DateTimeOffset.UnixEpoch, "Deed", draft.What, [.. draft.Edits.Select(e => e switch
        {
            Edit.Add add => add with { Item = Named(add.Item), Under = Named(add.Under) },
            Edit.Put put => put with { Item = Named(put.Item), Over = unseen ? [] : [.. log.House.Find(put.Item)?.Heads(put.Field).Select(h => h.Id) ?? []] },
            _ => e,
        })]);

        string Named(string item) => item.StartsWith('\u0001') ? $"{id.Device}-{id.Sequence}-{item[1..]}" : item;
    }
}
