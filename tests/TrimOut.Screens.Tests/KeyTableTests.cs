using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Houses;
using TrimOut.Screens.Cables;
using TrimOut.Screens.Copies;
using TrimOut.Screens.Figures;
using TrimOut.Screens.Firm;
using TrimOut.Screens.Help;
using TrimOut.Screens.History;
using TrimOut.Screens.Hours;
using TrimOut.Screens.HousePicker;
using TrimOut.Screens.InService;
using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Kit;
using TrimOut.Screens.Notices;
using TrimOut.Screens.Office;
using TrimOut.Screens.Papers;
using TrimOut.Screens.People;
using TrimOut.Screens.Photos;
using TrimOut.Screens.Rooms;
using TrimOut.Screens.Schedules;
using TrimOut.Screens.Shell;
using TrimOut.Screens.WhatIf;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests;

public class KeyTableTests
{
    private static readonly Lazy<ShellState> Shell = new(() => new ShellState(new TestDesk(new FakeTimeProvider()), new TestJob().Window("W01").Scribe));

    /// <summary>What the screens below see.</summary>
    internal static ScreenContext Context => Shell.Value.Context;

    internal static IReadOnlyList<IScreen> EveryScreen()
    {
        var desk = new TestDesk(new FakeTimeProvider());
        var sections = CommonKeys.Sections.Select(s => ((Ask.Section)s.Press(PickerScreen.At(desk), Shell.Value.Context).Ask!).Make(Shell.Value.Context));
        return [PickerScreen.At(desk), HelpScreen.For(Shell.Value), PreviewScreen.Of(desk.Papers[0], []), new NoticeScreen([]),
            new LockedHouseScreen(new LockedHouse("", "")), WhatIfScreen.At(Shell.Value.Context, null), Figures(), .. sections,
            RoomsScreen.On(null, Shell.Value.Context), PeopleScreen.On(null, Shell.Value.Context),
            ServiceScreen.About(null, Shell.Value.Context), new HoursScreen(0, Core.Plans.Hours.PhaseHours.Of(Shell.Value.Context.Log), []),
            SheetInHandScreen.At(Shell.Value.Context.House.ItemsOf(ItemKind.PanelType).First(), Shell.Value.Context.House), KitFolderScreen.Of("kit", []),
            new CopiesScreen([], 0), new OfficeScreen(0), new SchedulesScreen([], 0), Brings(), new PhotoFoldersScreen([], 0),
            FirmScreen.On(NoHouses.Board),
            PhotosScreen.Of("stick", new PhotosRead([], []), []), new UnitPhotosScreen(Shell.Value.Context.House.Units[0].Id, 0),
            new PictureScreen([new PictureOf("the unit W01", "a.jpg")], 0, "a.jpg", new Core.Refusal("")), Look(), ConflictsScreen.At(Shell.Value.Context),
            new CutPlanScreen(Shell.Value.Context.House, [], 0), new AsItStoodScreen(1, Shell.Value.Context, JobSheetScreen.At(Shell.Value.Context))];
    }

    private static ScheduleScreen Brings() => ScheduleScreen.Of("windows.csv", new ScheduleRead(null, null, [], [], 0, [], [], [], []),
        System.Collections.Immutable.ImmutableDictionary<string, string>.Empty);

    private static MergeScreen Look() => MergeScreen.Of(Shell.Value.Context.Log, new CopyRead(Shell.Value.Context.Log, []),
        Core.History.Merge.Of(Shell.Value.Context.Log, Shell.Value.Context.Log).Value, "copy.trimout");

    private static FiguresScreen Figures() => FiguresScreen.For(((IAsked)JobSheetScreen.At(Shell.Value.Context)).FiguresAt(Shell.Value.Context)!);

    public static TheoryData<string> Titles() => [.. EveryScreen().Select(s => s.Title).Distinct()];

    [Theory]
    [MemberData(nameof(Titles))]
    public void NoKeyMeansTwoThingsOnOneScreen(string title)
    {
        var screen = EveryScreen().First(s => s.Title == title);
        var strokes = screen.Keys.SelectMany(k => k.Strokes).ToList();
        Assert.Equal(strokes.Distinct().Count(), strokes.Count);
    }

    [Theory]
    [MemberData(nameof(Titles))]
    public void NoScreenTakesAKeyThatEveryScreenHas(string title)
    {
        var common = CommonKeys.For(Shell.Value).SelectMany(k => k.Strokes).ToHashSet();
        var screen = EveryScreen().First(s => s.Title == title);
        Assert.DoesNotContain(screen.Keys.SelectMany(k => k.Strokes), common.Contains);
    }

    [Theory]
    [MemberData(nameof(Titles))]
    public void EveryKeyHasAWordAndASentence(string title) => Assert.All(EveryScreen().First(s => s.Title == title).Keys, key =>
    {
        Assert.InRange(key.Name.Length, 2, 20);
        Assert.EndsWith(".", key.Help, StringComparison.Ordinal);
    });

    /// <summary>Keys that do one sort of thing to what each screen is about: the names that they have for it, and the sort of thing.</summary>
    private static readonly Dictionary<string, (string[] Names, string Does)> OneSortOfThing = new()
    {
        ["enter"] = (
            ["Open", "Edit", "Details", "Evidence", "Fix", "Remote", "Look at it", "As it stood", "Name or open", "Type", "Take", "Go on", "Try again",
                "Exchange"],
            "goes into what is under the cursor"),
        ["space"] = (["Mark next step", "Done", "Pick up / land", "Moves", "Page down", "Take or leave"],
            "does the next thing with what is under the cursor"),
        ["delete"] = (["Clear", "Unmark", "Take off", "Take waiver back"], "takes away what is said of what is under the cursor"),
        ["backspace"] = (["Clear", "Unmark", "Take off", "Take waiver back"], "as Del"),
        ["left"] = (["Phase before", "Remote before", "Unit before", "Part before", "Change before", "Cable before", "List before",
            "Way out before", "Less", "Photo before"], "the one before"),
        ["right"] = (["Next phase", "Next remote", "Next unit", "Next part", "Change after", "Next cable", "More", "Next heading", "Next list",
                "Next way out", "Next photo"],
            "the next one"),
        ["n"] = (["New house", "New window", "New panel", "New remote", "New item", "New part", "New room", "New box", "New contact",
            "New service"], "adds one"),
        ["N"] = (["New hub", "New visit"], "adds one of the other sort that the screen shows"),
        ["O"] = (["Open a path", "From folder", "View only", "Other copies"], "opens in another way than Enter"),
        ["w"] = (["Write calendar", "Write it"], "writes what the screen is about to a file"),
        ["t"] = (["Type a column", "Type a reading", "Type the output", "Type the tag"], "types what is due of the row under the cursor"),
        ["p"] = (["Cut plan", "Plan again", "Spread out"], "plans"),
        ["g"] = (["Go to tag", "Go to a day"], "goes to what is typed"),
        ["-"] = (["Leave out", "Not needed", "Not coming"], "says that it is not, with the item kept"),
    };

    /// <summary>Every key of every screen, and which names it has on which screens.</summary>
    internal static ILookup<string, (string Name, string Screen)> EveryKey() => EveryScreen().DistinctBy(s => s.GetType())
        .SelectMany(s => s.Keys.SelectMany(k => k.Strokes.Select(stroke => (Stroke: stroke, k.Name, Screen: KeysPageTests.Name(s)))))
        .ToLookup(k => k.Stroke, k => (k.Name, k.Screen));

    [Fact]
    public void OneKeyHasOneMeaningOverAllScreens() => Assert.All(EveryKey().Where(k => !Steps.Contains(k.Key)), key =>
    {
        var names = key.Select(k => k.Name).Distinct().ToList();
        if (OneSortOfThing.TryGetValue(key.Key, out var sort))
            Assert.Empty(names.Except(sort.Names));
        else
            Assert.True(names.Count == 1, $"{key.Key} is {string.Join(" and ", key.Select(k => $"{k.Name} on {k.Screen}"))}.");
    });

    [Fact]
    public void NoExceptionIsListedThatIsNone() => Assert.All(OneSortOfThing, sort =>
    {
        Assert.Empty(sort.Value.Names.Except(EveryKey()[sort.Key].Select(k => k.Name)));
        Assert.True(EveryKey()[sort.Key].Select(k => k.Name).Distinct().Count() > 1);
    });

    /// <summary>Up, Down and their like go through the list of each screen, which their help names.</summary>
    private static readonly string[] Steps = ["up", "down", "pageup", "pagedown", "home", "end"];

    /// <summary>What a key does, for docs/keys.md: its one name, or the sort of thing that it does under several.</summary>
    internal static string MeaningOf(string stroke, IEnumerable<string> names) =>
        OneSortOfThing.TryGetValue(stroke, out var sort) ? sort.Does : Steps.Contains(stroke) ? "goes through the list" : names.First();

    [Fact]
    public void EveryMainScreenHasADigit() => Assert.Equal("1234567890", string.Concat(CommonKeys.Sections.Select(s => s.Stroke)));
}
