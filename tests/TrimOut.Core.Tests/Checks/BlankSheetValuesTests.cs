using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks;

/// <summary>
/// A blank on a maker's sheet is never a pass: where some value of it would break a rule, the rule waits for the value while it is blank, or is broken all
/// the same. Which values a rule goes by is not asked of the rule: each is changed and what is said then is compared.
/// </summary>
public class BlankSheetValuesTests
{
    /// <summary>Rules about a value itself: none of them has anything to say of a blank.</summary>
    private static readonly string[] AboutTheValue = ["sheet-value-unusual", "kit-unchecked", "sheet-contradicts-itself"];

    /// <summary>
    /// The one tells by which exception a listing will do, and another rule waits for the listing; the other takes a blank for none in a house of the days
    /// when it was typed so.
    /// </summary>
    private static readonly string[] WaitedForElsewhere = ["listed-by-relaxation", "entry-under-middle-screw"];

    public static TheoryData<string> Ids => [.. AllChecks.All.Select(c => c.Info.Id).Except(AboutTheValue).Except(WaitedForElsewhere)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void AValueThatWouldBreakARuleIsWaitedForWhileItIsBlank(string id)
    {
        var check = AllChecks.Find(id)!;
        var silences = new[] { Example.Finding(check), Example.Passing(check) }.SelectMany(e => Silences(check, e.Play().Job.House));
        Assert.Equal([], silences.Distinct().Take(5));
    }

    private static IEnumerable<string> Silences(ICheck check, House house)
    {
        var read = NotedReads.Of(check, house).Select(r => r.Fact).ToHashSet();
        foreach (var part in house.Items.Values.Where(i => FactTable.IsKit(i.Kind) && house.IsPresent(i)).ToList())
        {
            var facts = SheetValues.Of(part).Where(read.Contains).ToList();
            foreach (var fact in facts)
            {
                // Beside what the others are: two values may break a rule only together.
                var beside = facts.Where(f => f != fact).SelectMany(f => Values(part, f, house).Select(v => With(house, part, f, v)));
                foreach (var silence in beside.Prepend(house).SelectMany(h => Silence(check, h, part, fact)))
                    yield return silence;
            }
        }
    }

    /// <summary>What some value of a part breaks, and nothing is said of while it is blank.</summary>
    private static IEnumerable<string> Silence(ICheck check, House house, Item part, Fact fact)
    {
        var said = check.Run(With(house, part, fact, null)).Where(r => r.Outcome is Outcome.Found or Outcome.NotChecked).Select(r => r.Subject.Id).ToHashSet();
        return Values(part, fact, house).SelectMany(value => check.Run(With(house, part, fact, value))
            .Where(r => r.Outcome is Outcome.Found && !said.Contains(r.Subject.Id))
            .Select(r => $"{fact.Name} of {house.NameOf(part)} {value}: {((Outcome.Found)r.Outcome).Message.In(house)}"));
    }

    private static IEnumerable<string> Values(Item part, Fact fact, House house)
    {
        if (part.Latest(fact.Name)?.Stored is { } now)
            yield return now;
        foreach (var option in fact.IsChoice ? fact.Options(house) : [])
            yield return option.Stored;
        if (UsualValues.All.FirstOrDefault(u => u.Fact == fact) is not { } usual)
            yield break;
        foreach (var value in new[] { usual.Least, usual.Most }.Select(v => fact.ReadTyped(fact.Show(v, house), house)).Where(v => v.Ok))
            yield return value.Value;
    }

    private static House With(House house, Item part, Fact fact, string? stored) =>
        HouseLog.Preview(house, new Draft("another value").PutStored(part.Id, fact.Name, stored));
}
