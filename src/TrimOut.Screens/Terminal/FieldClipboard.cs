using Terminal.Gui.App;

namespace TrimOut.Screens.Terminal;

/// <summary>What is cut and copied in the field that one types in: kept for pasting here, and handed to the terminal.</summary>
/// <remarks>The library's own asks programs of the system: over a remote connection those of another machine.</remarks>
/// <param name="hand">Hands text to the terminal.</param>
internal sealed class FieldClipboard(Action<string> hand) : ClipboardBase
{
    private string _kept = "";

    /// <inheritdoc/>
    public override bool IsSupported => true;

    /// <inheritdoc/>
    protected override string GetClipboardDataImpl() => _kept;

    /// <inheritdoc/>
    protected override void SetClipboardDataImpl(string text) => hand(_kept = text);
}
