using TrimOut.Core.Decisions;
using TrimOut.Core.Facts;
using TrimOut.Core.History;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Photos;
using TrimOut.Testing;

namespace TrimOut.Core.Tests.Decisions;

public class TakePhotosTests
{
    private static PhotoPlace At(TestJob job, string name) => new PhotoPlan(job.Scribe.Log).Place(new FoundPhoto(name, null, [])).Place!;

    private static TestJob Take(TestJob job, params (string Name, string Path)[] photos) =>
        job.Do(j => TakePhotos.Draft(j.House, j.Report, StepList.Shipped, [.. photos.Select(p => (At(j, p.Name), p.Path))]));

    [Fact]
    public void TheStepThatAsksForAPhotoIsDoneByItInTheSameChange()
    {
        var job = new TestJob().Window("W01").Mark("W01", "opening-seen").Legs("W01", ("20 ft", CablePlace.InWall)).Pulled("W01");
        var changes = job.Scribe.Log.Changes.Count;
        Take(job, ("W01 wall.jpg", "p/W01 wall.jpg"), ("W01 wall 2.jpg", "p/W01 wall 2.jpg"));
        Assert.Equal(changes + 1, job.Scribe.Log.Changes.Count);
        Assert.Equal("p/W01 wall.jpg | p/W01 wall 2.jpg", job.Run("W01").Show(RunFacts.Photo));
        Assert.Equal(StepMark.Done, job.Unit("W01").MarkOf(StepList.Find("wall-photographed")!));
        Assert.Equal("2 photos taken in, of W01; Open wall photographed: W01", job.Scribe.Log.Changes[^1].What);
        Assert.True(job.Scribe.Undo().Ok);
        Assert.Null(job.Unit("W01").MarkOf(StepList.Find("wall-photographed")!));
        Assert.Equal("", job.Run("W01").Show(RunFacts.Photo));
    }

    /// <summary>Who adds a photo beside another one did not take the first: on the day of a quarrel it counts who was there.</summary>
    [Fact]
    public void WhoNotedAPhotoStaysBesideItWhenAnotherOneNotesMoreThere()
    {
        var job = Take(new TestJob().Window("W01"), ("W01 rough.jpg", "p/first.jpg"));
        var first = job.Scribe.Log.Changes[^1];
        var bo = first with
        {
            Id = first.Id with { Device = "bo", Sequence = 1 },
            Stamp = first.Stamp + 1,
            By = "Bo",
            SaidAt = first.SaidAt.AddDays(3),
            Edits = [first.Edits.OfType<Edit.Put>().Single(p => p.Value == "p/first.jpg") with { Value = "p/first.jpg | p/second.jpg", Over = [first.Id] }],
        };
        var log = job.Scribe.Log.With(bo);
        Assert.Equal([("p/first.jpg", first.By, first.SaidAt), ("p/second.jpg", "Bo", bo.SaidAt)],
            HousePhotos.Of(log.House).Select(p => (p.Path, p.NotedIn(log).By, p.NotedIn(log).SaidAt)));
    }

    [Fact]
    public void AStepThatSomethingSpeaksAgainstStaysOpenWithThePhotoNoted()
    {
        // No cable was pulled yet: a picture of the wall shows nothing of it.
        var job = Take(new TestJob().Window("W01"), ("W01 wall.jpg", "p/a.jpg"));
        Assert.Equal("p/a.jpg", job.Run("W01").Show(RunFacts.Photo));
        Assert.Null(job.Unit("W01").MarkOf(StepList.Find("wall-photographed")!));
    }

    [Fact]
    public void WhatIsNotedAlreadyStaysAndAWordForNoneGives()
    {
        var job = new TestJob().Window("W01").Window("W02").Say("W01", UnitFacts.Photo, "photos/old.jpg").Say("W02", UnitFacts.Photo, "none yet");
        Take(job, ("W01.jpg", "p/W01.jpg"), ("W02.jpg", "p/W02.jpg"));
        Assert.Equal("photos/old.jpg, p/W01.jpg", string.Join(", ", PhotoPaths.Of(job.Unit("W01").Show(UnitFacts.Photo))));
        Assert.Equal("p/W02.jpg", job.Unit("W02").Show(UnitFacts.Photo));
        Assert.Equal(["W01", "W01", "W02"], HousePhotos.Of(job.House).Select(p => p.Of));
    }

    // A photo detail holds 240 characters.
    [Fact]
    public void ThereIsRoomUpToTheLastCharacterAndNoFurther()
    {
        var job = new TestJob().Window("W01");
        var (at, first) = (At(job, "W01.jpg"), new string('a', 120));
        Assert.Equal((bool[])[true, true], TakePhotos.HaveRoom(job.House, [(at, first), (at, new string('b', 240 - 120 - 3))]));
        Assert.Equal((bool[])[true, false, true], TakePhotos.HaveRoom(job.House, [(at, first), (at, new string('b', 240 - 120 - 2)), (at, "c")]));
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData(" | ")]
    public void NothingNotedIsNoPath(string? noted) => Assert.Empty(PhotoPaths.Of(noted));

    [Fact]
    public void APathIsNotedOnce() => Assert.Equal("a | b", PhotoPaths.With("a | b", "b"));
}
