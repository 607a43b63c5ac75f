using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Papers.Writing;
using static TrimOut.Papers.Writing.Inline;
using static TrimOut.Papers.Writing.MarkdownWriter;

namespace TrimOut.Papers.BinderSections;

/// <summary>What is otherwise than when a book was handed over; nothing where no book was, or nothing is.</summary>
/// <remarks>It goes by the change that noted the day of the book. Once a new book is handed over and its day is noted, it tells of that one.</remarks>
internal static class SinceLastBook
{
    /// <summary>What the book tells of.</summary>
    private static readonly ItemKind[] Kinds =
        [ItemKind.Window, ItemKind.Unit, ItemKind.Run, ItemKind.Leg, ItemKind.Panel, ItemKind.Hub, ItemKind.Remote, ItemKind.Preset];

    private static readonly ServiceKind?[] Replaced = [ServiceKind.Replaced, ServiceKind.MotorReplaced, ServiceKind.PartReplaced];

    public static void Write(MarkdownWriter to, PaperData data)
    {
        if (data.House.Job.Latest(HouseFacts.BinderGivenOn) is not { Value: DateOnly day } given || data.Log.At(given.Id) is not { Units.IsEmpty: false } then)
            return;
        var served = data.House.Services.Where(s => Replaced.Contains(s.Kind) && then.Find(s.Id) is null).ToList();
        // Where a record says what was replaced and by which, the serial and the box alone would say it once more, and neither when nor why.
        var again = ReadAgain(data.House);
        var rows = served.Select(s => Served(data, s))
            .Concat(Kinds.SelectMany(kind => Rows(then, data.House, kind, again, [.. served.Where(s => s.ReplacesUnit).Select(s => s.About!.Id)]))).ToList();
        if (rows.Count == 0)
            return;
        to.Heading(3, (Phrase)$"Changed since the book of {day.OnPaper()}");
        to.Filled(["What", "Detail", "Then", "Now"], rows);
    }

    /// <summary>What was replaced in service, and beside what was taken off when, why, and what was put in.</summary>
    private static Inline[] Served(PaperData data, Service service)
    {
        List<Inline> now = [service.DayOrNotYet(ServiceFacts.On, data.Date)];
        if (service.Show(ServiceFacts.Cause).Length > 0)
            now.Add(service.Entry(ServiceFacts.Cause));
        if (service is { ReplacesUnit: true, NewSerial: { } serial })
            now.Add(Ours($"serial {serial}"));
        return Row(service.About is { } about ? NameOf(data.House, about) : Dash, service.Entry(ServiceFacts.Kind),
            service.TakenOff is { } taken ? Ours($"serial {taken}") : Dash, Join(", ", now));
    }

    private static IEnumerable<Inline[]> Rows(House then, House now, ItemKind kind, HashSet<(string, Fact)> asked, HashSet<string> replaced)
    {
        var (before, after) = (Of(then, kind), Of(now, kind));
        foreach (var (_, item) in after.Where(i => !before.ContainsKey(i.Key) && !IsOfOneThatIsNot(i.Value, now, then)))
            yield return Row(Named(now, item), Dash, Dash, Ours("added"));
        foreach (var (id, item) in before)
        {
            if (!after.TryGetValue(id, out var still))
            {
                if (!IsOfOneThatIsNot(item, then, now))
                    yield return Row(Named(then, item), Dash, Dash, Ours("gone"));
                continue;
            }
            var changed = FactTable.Of(kind).Where(f => !f.IsKeyed && item.Latest(f)?.Stored != still.Latest(f)?.Stored
                && ((f != UnitFacts.Serial && f != UnitFacts.Arrival) || !replaced.Contains(id))).ToList();
            // What was read of what was taken off is no loss, and not a row for each reading.
            var again = changed.FindAll(f => still.Latest(f)?.Stored is null && asked.Contains((id, f)));
            if (again.Count > 0)
            {
                yield return Row(Named(now, still), Join(", ", [.. again.Select(f => Ours(f.Label))]),
                    Join(", ", [.. again.Select(new AnyItem(then, item).Entry)]), Ours("to be noted again"));
            }
            foreach (var fact in changed.Except(again))
                yield return Row(Named(now, still), Ours(fact.Label), new AnyItem(then, item).Entry(fact), new AnyItem(now, still).Entry(fact));
        }
    }

    /// <summary>What steps that wait since something was replaced ask for once more, with the item that has it.</summary>
    private static HashSet<(string, Fact)> ReadAgain(House house) =>
        [.. from waits in AskedAgain.Waiting(house)
            from fact in AskedAgain.ReadAgain(waits.Step)
            from id in new[] { waits.Subject.Id, (waits.Subject as Unit)?.Run?.Id }
            where id is not null
            select (id, fact)];

    /// <summary>Whether it is of something that comes or goes with it: a window that is added has its unit and its cable, and is one row.</summary>
    private static bool IsOfOneThatIsNot(Item item, House here, House there) => item.Under is { } under && here.Find(under) is { } whole
        && Kinds.Contains(whole.Kind) && (!(there.Find(under) is { Removed: false } same && IsTold(there, same)) || IsOfOneThatIsNot(whole, here, there));

    /// <summary>What it is called; the cable of a unit is told from the unit.</summary>
    private static Inline Named(House house, Item item) => item.Kind == ItemKind.Run ? Ours((Phrase)$"cable of {NameOf(house, item)}") : NameOf(house, item);

    /// <summary>Items of a kind that the book tells of; units and windows only where the window gets a covering.</summary>
    private static Dictionary<string, Item> Of(House house, ItemKind kind) => house.ItemsOf(kind)
        .Where(i => IsTold(house, i)).ToDictionary(i => i.Id);

    private static bool IsTold(House house, Item item) => item.Kind switch
    {
        ItemKind.Window => house.FindWindow(item.Id) is { LeftOut: false },
        ItemKind.Unit => house.FindUnit(item.Id) is not null,
        _ => true,
    };
}
