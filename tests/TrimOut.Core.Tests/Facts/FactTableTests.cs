using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Facts;

public class FactTableTests
{
    public static TheoryData<string> Names => [.. FactTable.All.Select(f => $"{KebabCase.Of(f.Subject)}/{f.Name}")];

    [Theory]
    [MemberData(nameof(Names))]
    public void AFactIsWellDeclared(string name)
    {
        var fact = Find(name);
        Assert.Matches("^[a-z]+(-[a-z0-9]+)*$", fact.Name);
        Assert.False(string.IsNullOrWhiteSpace(fact.Label));
        Assert.Matches("^[A-Z].*[.]$", fact.Help);
        Assert.False(string.IsNullOrWhiteSpace(fact.Hint));
        Assert.Single(FactTable.Of(fact.Subject), f => f.Name == fact.Name);
        Assert.Single(FactTable.Of(fact.Subject), f => f.Label == fact.Label);
        Assert.Same(fact, FactTable.Find(fact.Subject, fact.Field("key")));
    }

    [Fact]
    public void EveryDeclaredFactIsInTheTable()
    {
        var declared = typeof(Fact).Assembly.GetTypes().Where(t => t.Name.EndsWith("Facts", StringComparison.Ordinal))
            .SelectMany(t => t.GetFields().Where(f => f.IsPublic && typeof(Fact).IsAssignableFrom(f.FieldType)).Select(f => f.GetValue(null)));
        Assert.Equal(FactTable.All.Where(f => !AboutSheet.Is(f)).ToHashSet<object?>(), declared.ToHashSet());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void EachListedOptionReadsBack(string name)
    {
        var fact = Find(name);
        var house = new TestJob().House;
        Assert.All(fact.Options(house), o => Assert.Equal(o.Stored, fact.ReadTyped(o.Shown, house).Value));
    }

    [Fact]
    public void AFieldThatThisVersionDoesNotKnowIsNoFact()
    {
        Assert.Null(FactTable.Find(ItemKind.Window, "colour-of-the-cat"));
        Assert.Null(FactTable.Find(ItemKind.Window, "tag:key"));
    }

    [Fact]
    public void EveryValueOfANewHouseReadsInItsStoredForm() =>
        Assert.All(Jobs.Roughed().House.Items.Values,
            item => Assert.All(item.Fields.Where(f => !f.Key.StartsWith("steps-version", StringComparison.Ordinal) && Companion.Beside(f.Key) is null),
                field => Assert.NotNull(field.Value[^1].Value)));

    private static Fact Find(string name) => FactTable.All.Single(f => name == $"{KebabCase.Of(f.Subject)}/{f.Name}");
}
