using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Wording;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Checks;

public class OutcomeTests
{
    private static readonly Message Words = new("{0}");
    private static readonly TestJob Job = Jobs.Walked();

    private static Outcome.Found Found(string said, string mend = "mend", string field = "note", Working? working = null) =>
        new(Words.With(Arg.Typed(said)), Words.With(Arg.Typed(mend)), new FieldRef("w", field), working);

    private static Working Worked(string formula, params (string Name, string Value)[] inputs) => Working.Of(formula, () => [.. inputs]);

    [Fact]
    public void AWorkingIsAnotherWhereItsFormulaOrAFigureIs()
    {
        var one = Worked("a - b", ("a", "2"), ("b", "1"));
        Assert.Equal(one, Worked("a - b", ("a", "2"), ("b", "1")));
        Assert.Equal(one.GetHashCode(), Worked("a - b", ("a", "2"), ("b", "1")).GetHashCode());
        Assert.True(one.Equals((object)Worked("a - b", ("a", "2"), ("b", "1"))));
        Assert.NotEqual(one, Worked("a + b", ("a", "2"), ("b", "1")));
        Assert.NotEqual(one, Worked("a - b", ("a", "3"), ("b", "1")));
        Assert.NotEqual(one, Worked("a - b", ("a", "2")));
        Assert.False(one.Equals(null));
        Assert.False(one.Equals("a - b"));
    }

    [Fact]
    public void AWorkingIsPrintedOnceAndOnlyWhenItIsAskedFor()
    {
        var printed = 0;
        var working = Working.Of("a", () => [("a", $"{++printed}")]);
        Assert.Equal(0, printed);
        Assert.Equal("1", working.Inputs.Single().Value);
        Assert.Equal("1", working.Inputs.Single().Value);
    }

    [Fact]
    public void AFindingIsAnotherWhereAnythingOfItIs()
    {
        var one = Found("said", working: Worked("a"));
        Assert.Equal(one, Found("said", working: Worked("a")));
        Assert.Equal(one.GetHashCode(), Found("said", working: Worked("a")).GetHashCode());
        Assert.All(
        [
            Found("else", working: Worked("a")), Found("said", mend: "else", working: Worked("a")), Found("said", field: "tag", working: Worked("a")),
            Found("said", working: Worked("b")), Found("said"), one with { Also = [Found("too")] }, one with { ToldOf = [new("w", one.Message)] },
        ], other => Assert.NotEqual(one, other));
        Assert.False(one.Equals(null));
    }

    [Fact]
    public void SeveralFaultsOfOneSubjectAreToldEachByItself()
    {
        Assert.Null(Outcome.All(null, null));
        var all = Outcome.All(null, Found("a"), Outcome.All(Found("b"), Found("c")))!;
        Assert.Equal([Found("a"), Found("b"), Found("c")], all.Each);
        Assert.Equal(3, CheckResult.Each(new(
            "id", "Title", Severity.Note, Core.Phases.Phase.Order, new Source(Source.CommonPractice, "none")), Job.Unit("W01").Item, all).Count());
    }

    [Fact]
    public void WhatSeveralRulesLackIsToldTogetherAndOnceAndTheFirstIsFilledIn()
    {
        var (unit, window) = (Job.Unit("W01"), Job.Unit("W01").Window);
        var (kind, depth) = (NotChecked.Of(unit, UnitFacts.Kind), NotChecked.Of(window, WindowFacts.Depth));
        Assert.Null(NotChecked.All(null, new Outcome.Fine(), Found("a")));
        Assert.Same(depth, NotChecked.All(null, depth, new Outcome.Fine(), NotChecked.Of(window, WindowFacts.Depth)));
        var both = NotChecked.All(depth, kind, depth)!;
        Assert.Equal("depth; kind", both.Missing.In(Job.House));
        Assert.Equal(FieldRef.To(window.Item, WindowFacts.Depth), both.FillIn);
    }

    [Fact]
    public void WhatIsMissingSaysWhereItStands()
    {
        var unit = Job.Unit("W01");
        Assert.Equal("motor volts of Roller in the kit", NotChecked.Of(unit.Kind!, CoveringKindFacts.MotorVolts).Missing.In(Job.House));
        Assert.Equal("units of the house", NotChecked.Of(new JobItself(Job.House), HouseFacts.Units).Missing.In(Job.House));
        Assert.Equal("depth", NotChecked.Of(unit.Window, WindowFacts.Depth).Missing.In(Job.House));
        Assert.Equal(FieldRef.To(unit.Item, UnitFacts.Kind), NotChecked.Of(null, CoveringKindFacts.MotorVolts, unit, UnitFacts.Kind).FillIn);
    }

    // A detail is asked for where a step of the walk that the unit has asks for it, and nowhere else.
    [Fact]
    public void ADetailIsAskedForWhereItsStepAsksForIt()
    {
        var unit = Job.Unit("W01");
        Assert.IsType<Outcome.NotChecked>(NotChecked.WhereAsked(unit, "serial-noted", unit, UnitFacts.Serial));
        Assert.IsType<Outcome.DoesNotApply>(NotChecked.WhereAsked(unit, "serial-noted", unit, UnitFacts.Fabric));
        Assert.IsType<Outcome.DoesNotApply>(NotChecked.WhereAsked(unit, "no-such-step", unit, UnitFacts.Serial));
    }
}
