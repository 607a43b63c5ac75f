using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Houses;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Photos;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Plans.Photos;

/// <summary>What a person who sorts photos by hand would say of each; common practice, no published source.</summary>
public class PhotoPlanTests
{
    private static readonly DateTime Morning = new(2026, 3, 2, 8, 0, 0);

    /// <summary>Three windows, of which W02 has two units.</summary>
    private static TestJob Job()
    {
        var job = new TestJob().Window("W01").Window("W02").Window("W03");
        return job.Do(j => AddItems.Unit(j.House, j.House.FindTag("W02")!.Id));
    }

    private static PhotoPlacement Place(TestJob job, string name, DateTime? taken = null, params string[] labels) =>
        new PhotoPlan(job.Scribe.Log).Place(new FoundPhoto(name, taken, [.. labels.Select(l => new SeenLabel(l, HouseMark.Of(job.Scribe.Log)))]));

    [Theory]
    [InlineData("W03.jpg", "W03")]
    [InlineData("W03 rough.jpg", "W03")]
    [InlineData("w03_2.JPG", "W03")]
    [InlineData("W-03_2.jpg", "W03")]
    [InlineData("IMG_0042 (W03).jpeg", "W03")]
    [InlineData("2026-03-12 w 03 wall.png", "W03")]
    [InlineData("W02A hang.jpg", "W02A")]
    [InlineData("W02-b.jpg", "W02B")]
    [InlineData("W02 from the door.jpg", "W02")]
    [InlineData("W02 W02A.jpg", "W02A")]
    public void ATagAsAWordOfItsOwnSaysWhatItIsOf(string name, string tag)
    {
        var placed = Place(Job(), name);
        Assert.Equal((tag, PlacedBy.Name), (placed.Place?.Of.Name, placed.By));
        Assert.True(placed.IsSure);
        Assert.Contains($"by {tag} in its name", placed.Why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("W03rough.jpg", "no tag in its name")]
    [InlineData("W033.jpg", "its name says W033, and no window here is called so")]
    [InlineData("W99 wall.jpg", "its name says W99, and no window here is called so")]
    [InlineData("w 99.jpg", "its name says W99, and no window here is called so")]
    [InlineData("DSC99.jpg", "no tag in its name")]
    [InlineData("W20260312.jpg", "no tag in its name")]
    [InlineData("IMG_20260312_140512.jpg", "no tag in its name")]
    [InlineData("W01 W03.jpg", "W01 and W03 are in its name")]
    public void WhatNamesNoneOrTwoIsNotPlaced(string name, string why)
    {
        var placed = Place(Job(), name);
        Assert.Null(placed.Place);
        Assert.Contains(why, placed.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void ATagOfFiguresAloneIsNoWordOfAName()
    {
        var job = new TestJob().Window("12");
        Assert.Null(Place(job, "IMG_12.jpg").Place);
        Assert.Equal("12", Place(job, "IMG_12.jpg", null, "12").Place?.Of.Name);
    }

    [Fact]
    public void ATagThatAWindowHadBeforeStillFindsItUnlessAnotherHasItNow()
    {
        var job = Job().Say("W03", WindowFacts.Tag, "K1");
        var placed = Place(job, "w03 rough.jpg");
        Assert.Equal("K1", placed.Place!.Of.Name);
        Assert.Contains("by W03 in its name, as it was called before", placed.Why, StringComparison.Ordinal);
        Assert.Equal("K1", Place(job, "a.jpg", null, "W03").Place!.Of.Name);
        job.Window("W03");
        Assert.Equal(job.Unit("W03").Id, Place(job, "w03.jpg").Place!.Of.Id);
        // A label may be older than the new name.
        Assert.Equal("of the label in it: W03 was the tag of K1 before", Place(job, "a.jpg", null, "W03").Why);
    }

    [Fact]
    public void ALabelIsSurestAndOneThatContradictsTheNameIsLeftToAPerson()
    {
        var job = Job();
        var placed = Place(job, "IMG_1.jpg", null, "W02B");
        Assert.Equal(("W02B", PlacedBy.Label, "by its label"), (placed.Place!.Of.Name, placed.By, placed.Why));
        Assert.Equal("W02B", Place(job, "W02.jpg", null, "W02B").Place!.Of.Name);
        Assert.Contains("its label says W01, and its name W03".Replace("its label", "the label in it", StringComparison.Ordinal),
            Place(job, "W03.jpg", null, "W01").Why, StringComparison.Ordinal);
        Assert.Contains("says Z9", Place(job, "W03.jpg", null, "Z9").Why, StringComparison.Ordinal);
        Assert.Contains("labels of W01 and W03", Place(job, "panel.jpg", null, "W01", "W03").Why, StringComparison.Ordinal);
        Assert.Equal("W03", Place(job, "W03.jpg", null, "W01", "W03").Place!.Of.Name);
    }

    [Fact]
    public void ATimeBetweenTheMarksOfOneUnitIsOfferedAndNotDone()
    {
        var job = Job();
        job.Clock.Advance(TimeSpan.FromHours(1));
        job.Mark("W01", "opening-seen");
        job.Clock.Advance(TimeSpan.FromMinutes(20));
        var first = job.Clock.GetUtcNow().DateTime.AddMinutes(1);
        job.Mark("W03", "opening-seen");
        job.Clock.Advance(TimeSpan.FromMinutes(9));
        job.Mark("W03", "covering-planned");
        var placed = Place(job, "IMG_1.jpg", first.AddMinutes(5));
        Assert.Equal(("W03", PlacedBy.Time, false), (placed.Place!.Of.Name, placed.By, placed.IsSure));
        Assert.Contains($"by its time, {first.AddMinutes(5):yyyy-MM-dd HH:mm}: between \"", placed.Why, StringComparison.Ordinal);
        Assert.Equal("W03", Place(job, "IMG_2.jpg", first.AddMinutes(-2)).Place!.Of.Name);
        Assert.Contains("soon before", Place(job, "IMG_2.jpg", first.AddMinutes(-2)).Why, StringComparison.Ordinal);
        Assert.Null(Place(job, "IMG_3.jpg", first.AddMinutes(-10)).Place);
        Assert.Contains("lies between \"Opening seen\" of W01".Split('"')[0], Place(job, "IMG_3.jpg", first.AddMinutes(-10)).Why, StringComparison.Ordinal);
        Assert.Contains("within 2 hours", Place(job, "IMG_4.jpg", first.AddHours(5)).Why, StringComparison.Ordinal);
        // The same moment by a camera two hours ahead that says so.
        Assert.Equal("W03", new PhotoPlan(job.Scribe.Log)
            .Place(new FoundPhoto("IMG_5.jpg", first.AddMinutes(125), []) { FromUtc = TimeSpan.FromHours(2) }).Place!.Of.Name);
    }

    [Fact]
    public void MarksThatWereMadeOnSeveralUnitsAtOnceSayOfNoneWhenItWasWorkedOn()
    {
        var job = Job();
        job.Clock.Advance(TimeSpan.FromHours(3));
        var step = StepList.Find("opening-seen")!;
        job.Do(MarkStep.Done(job.Unit("W01"), step).Then<Draft>(d => d.And(MarkStep.Done(job.Unit("W03"), step).Value)));
        Assert.Null(Place(job, "IMG_1.jpg", job.Clock.GetUtcNow().DateTime.AddMinutes(1)).Place);
    }

    [Fact]
    public void ThePhaseSaysWhetherItShowsTheOpenWallOrTheUnit()
    {
        var job = Job();
        Assert.Equal(UnitFacts.Photo, Place(job, "W03.jpg").Place!.Fact);
        var wall = Place(job, "W03 wall.jpg").Place!;
        Assert.Equal((RunFacts.Photo, "wall-photographed", Phase.RoughIn), (wall.Fact, wall.Step!.Id, wall.Phase));
        Assert.Equal(job.Run("W03").Id, wall.Holder.Id);
        Assert.Equal(Phase.Hang, Place(job, "W03 brackets.jpg").Place!.Phase);
        Assert.Equal(WindowFacts.Photo, Place(job, "W02 wall.jpg").Place!.Fact);
        // A mark of the same day tells the phase where no word does.
        job.Pulled("W03");
        Assert.Equal(RunFacts.Photo, Place(job, "W03.jpg", job.Clock.GetUtcNow().DateTime.AddMinutes(2)).Place!.Fact);
        Assert.Equal(UnitFacts.Photo, Place(job, "W03 finished.jpg", job.Clock.GetUtcNow().DateTime.AddMinutes(2)).Place!.Fact);
    }

    [Fact]
    public void ABatteryUnitHasNoOpenWall()
    {
        var job = Job().Say("W03", UnitFacts.Power, "battery");
        Assert.Equal(UnitFacts.Photo, Place(job, "W03 wall.jpg").Place!.Fact);
    }

    [Fact]
    public void WhatCanNotBeShownOrIsThereAlreadyIsSaid()
    {
        var plan = new PhotoPlan(Job().Scribe.Log);
        var photo = new FoundPhoto("W03.jpg", Morning, []);
        Assert.Equal("the picture is damaged", plan.Place(photo with { Unreadable = "the picture is damaged" }).Why);
        Assert.Equal("the same picture was taken in before, as p/a.jpg", plan.Place(photo with { TakenInAs = "p/a.jpg" }).Why);
        Assert.Equal("the same picture as W01.jpg", plan.Place(photo with { SameAs = "W01.jpg" }).Why);
        Assert.False(plan.Place(photo with { Unreadable = "the picture is damaged" }, "W03").Ok);
    }

    [Theory]
    [InlineData("w03", "W03", nameof(ItemKind.Unit))]
    [InlineData("W-03 wall", "W03", nameof(ItemKind.Run))]
    [InlineData("W02b", "W02B", nameof(ItemKind.Unit))]
    public void ATypedTagPlacesAPhoto(string typed, string tag, string holder)
    {
        var placed = new PhotoPlan(Job().Scribe.Log).Place(new FoundPhoto("x.jpg", null, []), typed).Value;
        Assert.Equal((tag, PlacedBy.Hand, holder), (placed.Place!.Of.Name, placed.By, placed.Place.Holder.Kind.ToString()));
    }

    [Theory]
    [InlineData("", "No window or unit is called")]
    [InlineData("W09", "No window or unit is called W09")]
    [InlineData("W01 W03", "2 tags")]
    [InlineData("W03 kittens", "\"kittens\" is no word")]
    public void WhatNamesNothingIsRefused(string typed, string why) =>
        Assert.Contains(why, new PhotoPlan(Job().Scribe.Log).Place(new FoundPhoto("x.jpg", null, []), typed).Reason, StringComparison.Ordinal);

    /// <summary>W01 was called X1 for a while, W03 took its tag and gave it up again: nobody can tell which of the two a photo of W01 shows.</summary>
    [Fact]
    public void ATagThatTwoWindowsHadIsUnclearAndNotTheFirstOnes()
    {
        var job = Job().Say("W01", WindowFacts.Tag, "X1").Say("W03", WindowFacts.Tag, "W01").Say("W01", WindowFacts.Tag, "X2");
        var placed = Place(job, "W01 wall.jpg");
        Assert.Equal((null, "W01 was the tag of X1 and X2"), (placed.Place, placed.Why));
        Assert.Null(Place(job, "a.jpg", null, "W01").Place);
        var typed = new PhotoPlan(job.Scribe.Log).Place(new FoundPhoto("x.jpg", null, []), "W01");
        Assert.Contains("type the tag of today", typed.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void ALabelOfTwoWindowsThatSwappedNamesIsUnclearAlsoOfTheirUnits()
    {
        var job = new TestJob().Window("W01").Window("W02");
        foreach (var tag in new[] { "W01", "W02" })
            job.Do(j => AddItems.Unit(j.House, j.House.FindTag(tag)!.Id));
        job.SayOf("W01", WindowFacts.Tag, "W09").SayOf("W02", WindowFacts.Tag, "W01").SayOf("W09", WindowFacts.Tag, "W02");
        Assert.Contains("W01A was the tag of W02A before", Place(job, "a.jpg", null, "W01A").Why, StringComparison.Ordinal);
    }

    [Fact]
    public void ALabelOfAnotherHouseIsRefusedAndAnOldOneIsOffered()
    {
        var (job, other) = (Job(), HouseMark.Of(new TestJob(store: new MemoryStore("elsewhere")).Window("W03").Scribe.Log));
        Assert.NotEqual(other, HouseMark.Of(job.Scribe.Log));
        var plan = new PhotoPlan(job.Scribe.Log);
        var foreign = plan.Place(new FoundPhoto("W03.jpg", null, [new SeenLabel("W03", other)]));
        Assert.Equal((null, "the label in it, W03, is of another house"), (foreign.Place, foreign.Why));
        Assert.Equal("W03.jpg can't be taken in: the label in it, W03, is of another house.", plan.Place(foreign.Photo, "W03").Reason);
        var old = plan.Place(new FoundPhoto("a.jpg", null, [new SeenLabel("W03", null)]));
        Assert.Equal(("W03", false), (old.Place!.Of.Name, old.IsSure));
        Assert.Contains("does not say of which house", old.Why, StringComparison.Ordinal);
        var named = plan.Place(new FoundPhoto("w03.jpg", null, [new SeenLabel("W03", null)]));
        Assert.Equal((PlacedBy.Name, true), (named.By, named.IsSure));
    }

    /// <summary>A photo from before the cable was pulled shows no cable, and one from after the wall was closed no open wall.</summary>
    [Fact]
    public void APhotoWhoseTimeContradictsTheOpenWallIsOfferedAndMarksNothing()
    {
        var job = Job();
        job.Pulled("W03");
        var pulled = job.Clock.GetUtcNow().DateTime;
        Assert.True(Place(job, "W03 wall.jpg", pulled.AddHours(-20)).IsSure);
        var before = Place(job, "W03 wall.jpg", new DateTime(2020, 5, 1, 9, 0, 0));
        Assert.Equal((false, false, RunFacts.Photo), (before.IsSure, before.Place!.Marks, before.Place.Fact));
        Assert.Contains("2020-05-01 09:00, lies before \"Cable pulled, tails left\"", before.Why, StringComparison.Ordinal);
        job.Clock.Advance(TimeSpan.FromDays(30));
        job.Mark("W03", "cable-found");
        var found = job.Clock.GetUtcNow().DateTime;
        Assert.True(Place(job, "W03 wall.jpg", found.AddDays(-3)).IsSure);
        var after = Place(job, "W03 wall.jpg", found.AddDays(2));
        Assert.Equal((false, false), (after.IsSure, after.Place!.Marks));
        Assert.Contains("lies after \"Cable found again\"", after.Why, StringComparison.Ordinal);
        var said = new PhotoPlan(job.Scribe.Log).Place(new FoundPhoto("x.jpg", found.AddDays(2), []), "W03 wall").Value;
        Assert.True(said.IsSure && said.Place!.Marks);
    }

    /// <summary>Whoever photographs a unit that hangs does not photograph the wall behind it, although nobody marked its photo then.</summary>
    [Fact]
    public void AStepThatWasPassedOverIsNotWhatIsPhotographed()
    {
        var job = Job().Pulled("W01");
        Assert.Equal("Open wall photographed", Place(job, "W01.jpg").Place!.Step!.Label);
        job.Mark("W01", "brackets-fixed").Mark("W01", "clicked-in");
        var placed = Place(job, "W01.jpg").Place!;
        Assert.Equal((null, Phase.Hang), (placed.Step, placed.Phase));
        // One of the days before belongs to what was done by then.
        Assert.Equal(Phase.RoughIn, Place(job, "W01 wall.jpg").Place!.Phase);
    }

    [Fact]
    public void APhotoIsMovedAndTakenAway()
    {
        var job = Job().Say("W01", UnitFacts.Photo, "a/x.jpg | a/y.jpg").Say("W03", UnitFacts.Photo, "a/z.jpg");
        HousePhoto Of(string tag, string path) => HousePhotos.Of(job.Unit(tag)).Single(p => p.Path == path);
        job.Do(PutPhotoRight.Move(job.Scribe.Log, Of("W01", "a/x.jpg"), "W03"));
        Assert.Equal(("a/y.jpg", "a/z.jpg | a/x.jpg"), (job.Unit("W01").Show(UnitFacts.Photo), job.Unit("W03").Show(UnitFacts.Photo)));
        job.Do(PutPhotoRight.Remove(Of("W01", "a/y.jpg")));
        Assert.Equal("", job.Unit("W01").Show(UnitFacts.Photo));
        Assert.Equal("It is noted there already, at W03 (the unit).", PutPhotoRight.Move(job.Scribe.Log, Of("W03", "a/z.jpg"), "w03 finished").Reason);
        Assert.Equal("No window or unit is called W99. Type a tag, such as W03.", PutPhotoRight.Move(job.Scribe.Log, Of("W03", "a/z.jpg"), "W99").Reason);
        job.Scribe.Undo();
        Assert.Equal("a/y.jpg", job.Unit("W01").Show(UnitFacts.Photo));
    }
}
