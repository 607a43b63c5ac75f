using System.Globalization;
using TrimOut.Core.Checks;
using TrimOut.TrueHouse.Tests.Runs;
using TrimOut.TrueHouse.Tests.Truth;
using Xunit.Abstractions;

namespace TrimOut.TrueHouse.Tests;

/// <summary>Houses in which nothing is wrong: whatever is said there is a false alarm.</summary>
public class FaultlessHousesTests(ITestOutputHelper output)
{
    [Fact]
    public void AFaultlessHouseHearsNeitherStopNorCautionFromTheSheetsToTheHandover()
    {
        var (heard, units, wrong) = (new SortedDictionary<(Severity, string), int>(), 0, new List<string>());
        foreach (var (seed, walk) in Seeds.Faultless.AsParallel().AsOrdered().WithDegreeOfParallelism(2).Select(s => (s, Walk.Through(RandomHouse.Of(s)))))
        {
            units += walk.Installer.Truth.Units.Count();
            wrong.AddRange(walk.Book.Refusals.Select(r => $"seed {seed}: {r.Stage}: {r.Name} {r.Fact?.Label}: \"{r.Typed}\" was refused: {r.Reason}"));
            foreach (var (stage, said) in walk.NewlySaid().Where(s => s.Said.Severity != Severity.Note))
            {
                heard[(said.Severity, said.Check)] = heard.GetValueOrDefault((said.Severity, said.Check)) + 1;
                if (!(said.IsStop ? KnownFalseAlarms.Stops : KnownFalseAlarms.Cautions).ContainsKey(said.Check)
                    && (said.IsStop || !KnownFalseAlarms.Seldom.ContainsKey(said.Check)))
                    wrong.Add($"seed {seed}: {stage}: {walk.Book.NameOf(said.Subject)}: {said.Word} {said.Check}: {said.Message}");
            }
        }
        foreach (var ((severity, check), times) in heard)
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{severity} {check}: {times} times"));
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Seeds.Faultless.Count} houses, {units} units"));
        Assert.True(wrong.Count == 0, string.Join('\n', wrong.Take(40)));
        if (Seeds.AsInTheGate)
            Assert.Equal(KnownFalseAlarms.Stops.Keys.Concat(KnownFalseAlarms.Cautions.Keys).Order(), heard.Keys.Select(h => h.Item2).Order());
    }

    [Fact]
    public void AMeterOfTenthsOfAnOhmMakesTheFalseAlarmsThatAreKnown()
    {
        var walks = Seeds.Faultless.Take(40).Select(s => (s, Walk: Walk.Through(RandomHouse.Of(s), Stage.CloseIn, meterDigit: 0.1))).ToList();
        var heard = walks.SelectMany(w => w.Walk.NewlySaid()).Where(s => s.Said.Severity != Severity.Note).GroupBy(s => s.Said.Check).ToList();
        foreach (var check in heard)
            output.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{check.Key}: {check.Count()} of {walks.Sum(w => w.Walk.Installer.Truth.Wired.Count())} sound runs"));
        if (Seeds.AsInTheGate)
            Assert.Equal(KnownFalseAlarms.WithAMeterOfTenths.Keys.Order(), heard.Select(h => h.Key).Order());
    }
}
