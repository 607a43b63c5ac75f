using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.Core.Units;
using TrimOut.Testing;

namespace TrimOut.Tests.SampleJobs;

/// <summary>The kits of the samples are invented: unlike each other, and unlike the common practice of the tests.</summary>
public class SampleKitsTests
{
    private const double MostAlike = 0.25;

    /// <summary>What many makers have in common, and so says nothing of one: nothing at all, whole counts of one, steps of a tape, and the gauge that a
    /// cable is named by.</summary>
    private static readonly Fact[] Common = [CoveringKindFacts.RoundTo, CoveringKindFacts.EndAllowance, PanelTypeFacts.UnitsPerOutput, RemoteTypeFacts.Gangs,
        CableTypeFacts.BoxLength, CableTypeFacts.Conductor];

    public static TheoryData<string, string> Pairs => new()
    {
        { "canal-house", "orchard-cottage" }, { "canal-house", "ridge-house" }, { "orchard-cottage", "ridge-house" },
        { "canal-house", "common practice" }, { "orchard-cottage", "common practice" }, { "ridge-house", "common practice" },
    };

    [Theory]
    [MemberData(nameof(Pairs))]
    public void NoTwoKitsShareMoreThanAFewFigures(string one, string other) => Assert.All(
        HouseOf(one).Items.Values.Where(i => FactTable.IsKit(i.Kind)).GroupBy(i => i.Kind).Where(g => g.Key != ItemKind.HeadCover), sort =>
        {
            var (mine, others) = (Figures(HouseOf(one), sort.Key), Figures(HouseOf(other), sort.Key));
            var both = mine.Keys.Intersect(others.Keys).ToList();
            var alike = both.Where(k => mine[k] == others[k]).ToList();
            Assert.True(alike.Count <= both.Count * MostAlike, $"{sort.Key}: {alike.Count} of {both.Count}: {string.Join(", ", alike)}");
        });

    [Fact]
    public void TheSetbacksOfTheThreeAreUnlike() => Assert.All(new[] { "Roller", "Cellular", "Wood blind" }, kind => Assert.Equal(3,
        new[] { "canal-house", "orchard-cottage", "ridge-house" }
            .Select(s => Figures(HouseOf(s), ItemKind.CoveringKind)[$"{kind}: {CoveringKindFacts.Setback.Label}"]).Distinct().Count()));

    /// <summary>Runs that are alike in two houses would be read as the table of one maker.</summary>
    [Fact]
    public void NoCableOfOneHasTheLongestRunOfACableOfAnother()
    {
        var runs = from sample in new[] { "canal-house", "orchard-cottage", "ridge-house" }
                   let cables = SampleJob.Open(sample).House.ItemsOf(ItemKind.CableType)
                   from run in cables.Select(c => c.Get(CableTypeFacts.LongestRun)).OfType<Length>().Distinct()
                   select run;
        Assert.Equal(runs.Distinct().Order(), runs.Order());
    }

    /// <summary>The figures of all parts of one sort by their names: lengths to the millimetre, for inches and millimetres never agree to more.</summary>
    private static Dictionary<string, string> Figures(House house, ItemKind kind) => house.ItemsOf(kind)
        .SelectMany(part => UsualValues.All.Select(u => u.Fact).Where(f => f.Subject == kind && !Common.Contains(f) && part.Latest(f)?.Value is not null)
            .Select(f => (Name: kind == ItemKind.PanelType ? f.Label : $"{house.NameOf(part)}: {f.Label}", Value: Figure(part.Latest(f)!.Value!))))
        .DistinctBy(f => f.Name).ToDictionary(f => f.Name, f => f.Value);

    private static string Figure(object value) => value is Length length ? length.RoundNearest(Length.FromMillimetres(1)).ToString() : value.ToString()!;

    private static House HouseOf(string name) => name == "common practice"
        ? HouseLog.Preview(House.Empty, CommonPracticeKit.NewHouse("Common practice", DisplayUnits.Inches).Value)
        : SampleJob.Open(name).House;
}
