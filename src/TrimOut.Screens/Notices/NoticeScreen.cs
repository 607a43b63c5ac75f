using TrimOut.Screens.Frames;
using TrimOut.Screens.Shell;

namespace TrimOut.Screens.Notices;

/// <summary>What has to be read before the work goes on: it stays until it was seen.</summary>
/// <param name="Texts">What is said, each by itself.</param>
internal sealed record NoticeScreen(IReadOnlyList<string> Texts) : IScreen
{
    public string Title => "Before you begin";

    public IReadOnlyList<IKeyAction> Keys => NoticeKeys.All;

    public void Draw(Area area, ScreenContext context, Typing? typing)
    {
        var y = 1;
        foreach (var text in Texts)
        {
            area.Put(2, y, context.Glyphs.Stop, Tone.Caution);
            y = area.Part(4, 0, area.Width - 6, area.Height).PutWrapped(0, y, area.Height - y, text) + 1;
        }
        area.Put(4, y, "Enter goes on.", Tone.Strong);
    }
}

/// <summary>Keys of a notice.</summary>
internal static class NoticeKeys
{
    public static readonly IReadOnlyList<IKeyAction> All =
    [
        new KeyAction<NoticeScreen>("enter", "Go on", "Goes on to the house.", (s, _) => new Transition(s, new Ask.Back())),
    ];
}
