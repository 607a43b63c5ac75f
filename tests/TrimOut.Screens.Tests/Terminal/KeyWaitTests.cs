using System.Runtime.CompilerServices;
using Microsoft.Extensions.Time.Testing;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using TrimOut.Screens.Shell;
using TrimOut.Screens.Terminal;
using TrimOut.Testing;

namespace TrimOut.Screens.Tests.Terminal;

public class KeyWaitTests
{
    [Fact]
    public void ThisVersionOfTheLibraryTakesAReaderThatWaits()
    {
        using var wait = new KeyWait(() => false);
        Assert.Equal(!OperatingSystem.IsWindows(), wait.IsPatient);
    }

    public static TheoryData<string, Func<IComponentFactory, object>> TakenAway => new()
    {
        { "the constructor", WithoutConstructor },
        { "the class", WithoutClass },
        { "the library's name", WithoutLibrary },
        { "what it makes", _ => new object() },
    };

    [Theory]
    [MemberData(nameof(TakenAway))]
    public void WithoutTheConstructorTheScreensTakeKeysTheLibrarysOwnWay(string gone, Func<IComponentFactory, object> over)
    {
        using var wait = new KeyWait(() => true, over);
        Assert.False(wait.IsPatient, gone);
        var shell = new ShellState(new TestDesk(new FakeTimeProvider()), new TestJob().Window("W01").Scribe, null, Frames.Glyphs.Drawn);
        using var app = wait.App;
        app.Init(DriverRegistry.Names.ANSI);
        app.Driver!.SetScreenSize(80, 24);
        using var view = new ShellView(shell);
        app.Begin(view);
        view.Listen(app);
        app.InjectKey(Key.Enter);
        app.LayoutAndDraw();
        Assert.Contains("W01, Kitchen", app.Driver.ToString(), StringComparison.Ordinal);
    }

    [UnsafeAccessor(UnsafeAccessorKind.Constructor)]
    [return: UnsafeAccessorType("Terminal.Gui.App.ApplicationImpl, Terminal.Gui")]
    private static extern object WithoutConstructor(IComponentFactory factory, KeyWaitTests nobodyTakesThis);

    [UnsafeAccessor(UnsafeAccessorKind.Constructor)]
    [return: UnsafeAccessorType("Terminal.Gui.App.NoSuchApplication, Terminal.Gui")]
    private static extern object NoSuchClass(IComponentFactory factory);

    [UnsafeAccessor(UnsafeAccessorKind.Constructor)]
    [return: UnsafeAccessorType("Terminal.Gui.App.ApplicationImpl, No.Such.Library")]
    private static extern object NoSuchLibrary(IComponentFactory factory);

    private static object WithoutConstructor(IComponentFactory factory) => WithoutConstructor(factory, null!);

    private static object WithoutClass(IComponentFactory factory) => NoSuchClass(factory);

    private static object WithoutLibrary(IComponentFactory factory) => NoSuchLibrary(factory);
}
