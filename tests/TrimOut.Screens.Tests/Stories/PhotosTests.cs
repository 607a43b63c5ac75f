using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Facts;
using TrimOut.Core.Phases;
using TrimOut.Core.Plans.Photos;
using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Photos;
using TrimOut.Screens.Shell;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Stories;

/// <summary>Somebody comes back with a stick of photos: they are looked at, one is told where it belongs, and they are taken in and seen again.</summary>
public class PhotosTests
{
    private const string Stick = "/media/stick/DCIM";

    private readonly TestDesk _desk = new(new FakeTimeProvider(new DateTimeOffset(2026, 3, 5, 8, 0, 0, TimeSpan.Zero)));
    private readonly ShellState _shell;

    public PhotosTests()
    {
        var job = new TestJob().Window("W01").Mark("W01", "opening-seen").Legs("W01", ("20 ft", CablePlace.InWall)).Pulled("W01").Window("W02");
        job.Clock.Advance(TimeSpan.FromDays(1));
        job.Mark("W02", "opening-seen");
        _desk.FoundPhotos[Stick] = new PhotosRead(
        [
            File("IMG_1.jpg", new DateTime(2026, 3, 1, 9, 0, 0)), File("W01 wall.jpg"),
            File("IMG_2.jpg", null, new SeenLabel("W02", HouseMark.Of(job.Scribe.Log))),
            File("IMG_3.jpg", job.Clock.GetUtcNow().DateTime.AddMinutes(3)),
        ], []);
        _shell = new ShellState(_desk, job.Scribe);
    }

    private static PhotoFile File(string name, DateTime? taken = null, params SeenLabel[] labels) =>
        new($"{Stick}/{name}", name, new FoundPhoto(name, taken, [.. labels]));

    private void Press(params string[] keys)
    {
        foreach (var key in keys)
            _shell.Press(key);
    }

    private void Type(string text)
    {
        _shell.TextChanged(text);
        Press("enter");
    }

    private string Seen(int width = 120) => _shell.Draw(width, 30).ToText();

    [Fact]
    public void WhatIsSureIsChosenWhatItsTimeSaysIsOfferedAndTheRestIsListedWithTheReason()
    {
        Press("B", "enter");
        var screen = Assert.IsType<PhotosScreen>(_shell.Screen);
        Assert.Equal(["W01 wall.jpg", "IMG_2.jpg"], screen.Chosen.Select(r => r.File.Photo.Name));
        Assert.Contains("2 photos would be copied beside this house", Seen(), StringComparison.Ordinal);
        Assert.Contains("1 offered, 1 not placed", Seen(), StringComparison.Ordinal);
        Assert.Matches("IMG_2.jpg +W02 .*by its label", Seen());
        Assert.Matches("IMG_1.jpg .*no tag or label in it", Seen());
        Assert.Empty(_shell.Context.House.Units[0].Show(UnitFacts.Photo));
    }

    [Fact]
    public void TakenInTheyAreNotedAndTheStepIsDoneAndOneUndoTakesItBack()
    {
        Press("B", "enter", "enter");
        Assert.Contains("Take in 2 photos?", Seen(), StringComparison.Ordinal);
        Press("y");
        Assert.IsType<JobSheetScreen>(_shell.Screen);
        Assert.Contains("2 photos taken in, of W01, W02; Open wall photographed: W01", Seen(), StringComparison.Ordinal);
        var unit = _shell.Context.House.Units[0];
        Assert.Equal("house-photos/W01 wall.jpg", unit.Run!.Show(RunFacts.Photo));
        Assert.NotNull(unit.MarkOf(StepList.Find("wall-photographed")!));
        Press("u", "u");
        Assert.Equal("", _shell.Context.House.Units[0].Run!.Show(RunFacts.Photo));
    }

    [Fact]
    public void ATagThatIsTypedPlacesAPhotoAndSpaceLeavesOneOut()
    {
        Press("B", "enter", "space", "end", "t");
        Type("W09");
        Assert.Contains("No window or unit is called W09", Seen(), StringComparison.Ordinal);
        Type("w01 brackets");
        Assert.Equal(["IMG_2.jpg", "IMG_1.jpg"], ((PhotosScreen)_shell.Screen).Chosen.Select(r => r.File.Photo.Name));
        Press("enter", "y");
        Assert.Equal("house-photos/IMG_1.jpg", _shell.Context.House.Units[0].Show(UnitFacts.Photo));
        Assert.Equal("", _shell.Context.House.Units[0].Run!.Show(RunFacts.Photo));
    }

    [Fact]
    public void AStickThatIsPulledOutLosesNothingThatWasTakenIn()
    {
        _desk.GoneWithTheStick.Add("IMG_2.jpg");
        Press("B", "enter", "enter", "y");
        Assert.Equal("house-photos/W01 wall.jpg", _shell.Context.House.Units[0].Run!.Show(RunFacts.Photo));
        Assert.Contains("1 photo saved. Not taken in: IMG_2.jpg", Seen(), StringComparison.Ordinal);
    }

    [Fact]
    public void ThePhotosOfAUnitAreListedAndSeenInCells()
    {
        Press("B", "enter", "enter", "y", "home", "z");
        Assert.IsType<UnitPhotosScreen>(_shell.Screen);
        Assert.Matches("W01 wall.jpg +the open wall W01", Seen());
        Press("enter");
        var frame = _shell.Draw(120, 30);
        Assert.Contains("/houses/house-photos/W01 wall.jpg", frame.ToText(), StringComparison.Ordinal);
        var tints = Enumerable.Range(0, frame.Height).SelectMany(y => frame.Row(y).ToArray()).Select(c => c.Tint).OfType<Frames.Tint>().ToList();
        Assert.Contains(tints, t => t.Above == new Frames.Dot(255, 0, 0));
        Assert.Equal(new Frames.Dot(0, 0, 255), tints[^1].Below);
        _desk.LostPictures.Add("house-photos/W01 wall.jpg");
        Press("esc", "enter");
        Assert.Contains("It can't be shown here: there is no such file.", Seen(), StringComparison.Ordinal);
    }

    [Fact]
    public void APhotoThatIsNotedWronglyIsMovedAndOneIsTakenAway()
    {
        Press("B", "enter", "enter", "y", "home", "z", "t");
        _shell.TextChanged("W99");
        Press("enter");
        Assert.Contains("No window or unit is called W99.", Seen(), StringComparison.Ordinal);
        _shell.TextChanged("W01 finished");
        Press("enter");
        Assert.Matches("W01 wall.jpg +the unit W01", Seen());
        Assert.Equal("", _shell.Context.House.Units[0].Run!.Show(RunFacts.Photo));
        Press("X", "X");
        Assert.Equal("", _shell.Context.House.Units[0].Show(UnitFacts.Photo));
        Press("u", "u");
        Assert.Equal("house-photos/W01 wall.jpg", _shell.Context.House.Units[0].Show(UnitFacts.Photo));
    }

    [Fact]
    public void AUnitWithoutPhotosSaysHowToComeToSome()
    {
        Press("z");
        Assert.Contains("No picture of W01 is noted. B on the job sheet", Seen(), StringComparison.Ordinal);
    }

    [Fact]
    public void APhotoOfTheStickIsLookedAtBeforeItIsTakenIn()
    {
        Press("B", "enter", "z");
        Assert.IsType<PictureScreen>(_shell.Screen);
        Assert.Contains("(1 of 4)", Seen(), StringComparison.Ordinal);
        Press("right");
        Assert.Contains("(2 of 4)", Seen(), StringComparison.Ordinal);
        Press("esc");
        Assert.IsType<PhotosScreen>(_shell.Screen);
    }
}
