using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Testing;

/// <summary>A house with an item of every sort and a value for every fact of every item.</summary>
public static class FilledHouse
{
    private static readonly string[] Tries =
        ["1", "10", "4", "12", "30", "100", "1987", "2026-03-14", "SW", "16 AWG", "2 screws", "7:30", "America/Denver", "done"];

    public static TestJob Of(int windows)
    {
        var job = BigHouse.Of(windows);
        var (window, remote) = (job.House.Windows[0], job.House.Remotes[0]);
        job.Do(new Draft("one of every sort").New(ItemKind.Preset, remote.Id, out _)
            .New(ItemKind.Punch, window.Id, out _).New(ItemKind.Waiver, window.Id, out _)
            .New(ItemKind.Contact, House.RootId, out _).New(ItemKind.Visit, House.RootId, out _)
            .New(ItemKind.Service, window.Units[0].Id, out _)
            .New(ItemKind.Box, House.RootId, out var box).Put(box, BoxFacts.Cable, new ItemRef(job.House.ItemsOf(ItemKind.CableType).First().Id)));
        var filled = new Draft("every fact");
        foreach (var item in job.House.Items.Values.Where(i => !i.Removed))
        {
            foreach (var fact in FactTable.Of(item.Kind))
            {
                foreach (var field in FieldsOf(job.House, item, fact).Where(f => item.Latest(f) is null))
                    filled = filled.PutStored(item.Id, field, Value(job.House, fact));
            }
        }
        return job.Do(filled);
    }

    private static IEnumerable<string> FieldsOf(House house, Item item, Fact fact) => !fact.IsKeyed ? [fact.Name]
        : fact.Name == StepMark.FactName ? StepList.All.Where(s => s.Subject == item.Kind).Select(s => s.Field)
        : house.Units.Take(3).Select(u => fact.Field(u.Id));

    private static string Value(House house, Fact fact) => fact.Options(house).Select(o => o.Stored)
        .Concat(Tries.Select(t => fact.ReadTyped(t, house)).Where(r => r.Ok).Select(r => r.Value)).First();
}
