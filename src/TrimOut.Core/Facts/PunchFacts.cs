using TrimOut.Core.Houses;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Facts;

/// <summary>What is known about a punch item written by hand; it belongs to the item that it is under.</summary>
public static class PunchFacts
{
    private static readonly Declare Of = new(ItemKind.Punch);

    public static readonly Fact<string> What = Of.Text("what", "What", "What is to be fixed.", null, Declare.Note);
    public static readonly Fact<Phase> Phase = Of.Choice<Phase>("phase", "Phase", "The phase that it holds up.");
    public static readonly Fact<string> Photo = Of.Text("photo", "Photo", "Path of a picture; | between several.", null, 240);
    public static readonly Fact<PunchState> State = Of.Choice<PunchState>("state", "State", "Open or done.");

    internal static readonly Fact[] All = [What, Phase, Photo, State];
}
