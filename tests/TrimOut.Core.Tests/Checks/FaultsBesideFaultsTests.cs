using TrimOut.Core.Checks;
using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Reads;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks;

/// <summary>Whoever waives one fault of a thing has not waived the next one: it is a finding of its own, or makes the finding another one.</summary>
public class FaultsBesideFaultsTests
{
    private const int MostFaults = 16;

    private static readonly string[] Typed =
    [
        "", "0", "1", "2", "3", "100", "1/4\"", "1\"", "5\"", "20\"", "35\"", "37\"", "61\"", "200\"", "-3", "-24", "12", "24", "48", "0.5", "open", "2020-01-01",
        "2030-01-01", "red, red, black, black", "none", "A thing", "W01", "W02", "yes", "no",
    ];

    public static TheoryData<string> Ids => [.. AllChecks.All.Select(c => c.Info.Id)];

    /// <summary>
    /// Each house of a check's page gets every single fault that a detail which the check reads can have, and each two of them together: where the first was
    /// waived, the second is open.
    /// </summary>
    [Theory]
    [MemberData(nameof(Ids))]
    public void OfTwoFaultsTheSecondIsOpenOnceTheFirstIsWaived(string id)
    {
        var check = AllChecks.Find(id)!;
        foreach (var house in new[] { Example.Passing(check).Play().Job.House, Example.Finding(check).Begin().House, Example.Finding(check).Play().Job.House })
        {
            var before = Found(check, house);
            foreach (var subject in Faults(check, house, before).GroupBy(f => f.Subject))
            {
                var faults = subject.DistinctBy(f => (string.Join('|', f.Figures.Order()), f.Field)).Take(MostFaults).ToList();
                foreach (var first in faults)
                {
                    foreach (var second in faults.Where(f => f.Field != first.Field && !f.Figures.IsSubsetOf(first.Figures)))
                    {
                        var both = Of(Found(check, HouseLog.Preview(HouseLog.Preview(house, first.Draft), second.Draft)), subject.Key);
                        Assert.True(both.Count == 0 || !both.IsSubsetOf(first.Figures) || IsMended(check, first, second),
                            $"{first.Draft.What}, then {second.Draft.What}:\n{string.Join('\n', both)}\nsecond alone:\n{string.Join('\n', second.Figures)}");
                    }
                }
            }
        }
    }

    /// <summary>Faults that are none beside the first: what makes the first one takes away what the second is judged by.</summary>
    private static bool IsMended(ICheck check, Fault first, Fault second) => NoneBeside.Contains((check.Info.Id, first.Field.Fact, second.Field.Fact));

    private static readonly HashSet<(string Check, string First, string Second)> NoneBeside = [];

    private static IEnumerable<Fault> Faults(ICheck check, House house, ILookup<string, string> before)
    {
        ReadRecorder.Record(() => check.Run(new House(house.State)).ToList(), out var reads);
        foreach (var item in house.Items.Values.Where(i => !i.Removed))
        {
            foreach (var fact in FactTable.Of(item.Kind).Where(f => !f.IsKeyed && reads.Contains(ReadKey.Field(item, f.Name).Value)))
            {
                foreach (var typed in Typed.Concat(fact.Options(house).Select(o => o.Stored)))
                {
                    if (SetFact.Typed(house, item, fact, typed) is not { Ok: true } draft)
                        continue;
                    foreach (var found in Found(check, HouseLog.Preview(house, draft.Value)))
                    {
                        if (found.ToHashSet() is var figures && !figures.IsSubsetOf(before[found.Key]))
                            yield return new Fault(found.Key, (item.Id, fact.Name), draft.Value, figures);
                    }
                }
            }
        }
    }

    private static ILookup<string, string> Found(ICheck check, House house) => check.Run(house).Where(r => r.Outcome is Outcome.Found)
        .ToLookup(r => r.Subject.Id, r => ((Outcome.Found)r.Outcome).Message.Figures);

    private static HashSet<string> Of(ILookup<string, string> found, string subject) => [.. found[subject]];

    private sealed record Fault(string Subject, (string Item, string Fact) Field, Draft Draft, HashSet<string> Figures);
}
