using TrimOut.Core.Checks;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks;

public class CatalogueTests
{
    private static readonly Type[] Declared =
        [.. typeof(ICheck).Assembly.GetTypes().Where(t => t is { IsAbstract: false, IsInterface: false } && typeof(ICheck).IsAssignableFrom(t))];

    public static TheoryData<string> Ids => [.. AllChecks.All.Select(c => c.Info.Id)];

    [Fact]
    public void TheListNamesEveryCheckOnce() => Assert.Equal(Declared.Select(t => t.FullName).Order(), AllChecks.All.Select(c => c.GetType().FullName).Order());

    [Fact]
    public void EveryIdIsThereOnce() => Assert.Equal(AllChecks.All.Length, AllChecks.All.Select(c => c.Info.Id).Distinct().Count());

    [Theory]
    [MemberData(nameof(Ids))]
    public void AnIdIsTheNameOfItsFile(string id)
    {
        Assert.Matches("^[a-z]+(-[a-z0-9]+)*$", id);
        Assert.Equal(id, KebabCase.Of(AllChecks.Find(id)!.GetType().Name));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void ACheckHasATestClassOfItsName(string id)
    {
        var name = AllChecks.Find(id)!.GetType().FullName!.Replace("TrimOut.Core.", "TrimOut.Core.Tests.", StringComparison.Ordinal) + "Tests";
        Assert.Contains(GetType().Assembly.GetType(name)?.GetMethods() ?? [], m => m.IsDefined(typeof(FactAttribute), true));
    }

    [Fact]
    public void ANewHouseHasNoStops() => Assert.Empty(new TestJob().Report.OpenStops);
}
