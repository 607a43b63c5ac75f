using Microsoft.Extensions.Time.Testing;
using TrimOut.Core.Houses;
using TrimOut.Screens.Cables;
using TrimOut.Screens.Figures;
using TrimOut.Screens.Help;
using TrimOut.Screens.History;
using TrimOut.Screens.HousePicker;
using TrimOut.Screens.JobSheet;
using TrimOut.Screens.Kit;
using TrimOut.Screens.Notices;
using TrimOut.Screens.Papers;
using TrimOut.Screens.Rooms;
using TrimOut.Screens.Shell;
using TrimOut.Screens.WhatIf;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests;

public class KeyTableTests
{
    private static readonly Lazy<ShellState> Shell = new(() => new ShellState(new TestDesk(new FakeTimeProvider()), new TestJob().Window("W01").Scribe));

    internal static IReadOnlyList<IScreen> EveryScreen()
    {
        var desk = new TestDesk(new FakeTimeProvider());
        var sections = CommonKeys.Sections.Select(s => ((Ask.Section)s.Press(PickerScreen.At(desk), Shell.Value.Context).Ask!).Make(Shell.Value.Context));
        return [PickerScreen.At(desk), HelpScreen.For(Shell.Value), PreviewScreen.Of(desk.Papers[0], []), new NoticeScreen([]),
            new LockedHouseScreen(new LockedHouse("", "")), WhatIfScreen.At(Shell.Value.Context, null), Figures(), .. sections,
            RoomsScreen.On(null, Shell.Value.Context),
            SheetInHandScreen.At(Shell.Value.Context.House.ItemsOf(ItemKind.PanelType).First(), Shell.Value.Context.House), KitFolderScreen.Of("kit", []),
            new CutPlanScreen(Shell.Value.Context.House, [], 0), new AsItStoodScreen(1, Shell.Value.Context, JobSheetScreen.At(Shell.Value.Context))];
    }

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

    [Fact]
    public void EveryMainScreenHasADigit() => Assert.Equal("1234567890", string.Concat(CommonKeys.Sections.Select(s => s.Stroke)));
}
