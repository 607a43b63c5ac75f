using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Tests.Phases;

public class StepListTests
{
    public static TheoryData<string> Ids => [.. StepList.All.Select(s => s.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void AStepIsWellMade(string id)
    {
        var step = Assert.Single(StepList.All, s => s.Id == id);
        Assert.Matches("^[a-z]+(-[a-z]+)*$", id);
        Assert.False(string.IsNullOrWhiteSpace(step.Label));
        Assert.Matches("[.]$", step.Cue);
        Assert.Contains(step.Subject, (ItemKind[])[ItemKind.Unit, ItemKind.Panel, ItemKind.House]);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void ItsEvidenceIsAFactThatTheSubjectOrItsWindowOrRunHas(string id)
    {
        var step = StepList.Find(id)!;
        ItemKind[] holders = step.Subject == ItemKind.Unit ? [ItemKind.Unit, ItemKind.Window, ItemKind.Run] : [step.Subject];
        Assert.All(step.Evidence, f => Assert.Contains(f.Subject, holders));
    }

    [Fact]
    public void StepsStandInTheOrderOfThePhases() => Assert.Equal(StepList.All.Select(s => s.Phase).Order(), StepList.All.Select(s => s.Phase));

    [Fact]
    public void EveryPhaseHasStepsForAUnitOrTheHouse() =>
        Assert.All(PhaseNames.All, p => Assert.Contains(StepList.All, s => s.Phase == p && s.Subject != ItemKind.Panel));

    // Mains work is for a licensed electrician: the step that records it asks for the name and the licence.
    [Fact]
    public void MainsAreSignedByAnElectricianWithALicence() =>
        Assert.Superset(new HashSet<Fact> { PanelFacts.ConnectedBy, PanelFacts.Licence }, StepList.Find("mains-connected")!.Evidence.ToHashSet());
}
