namespace TrimOut.Screens.Frames;

/// <summary>What a piece of text is, which a look turns into colours; no meaning hangs on the colour alone.</summary>
internal enum Tone
{
    Text,
    Dim,
    Strong,
    Heading,
    Bar,
    Selected,
    Key,
    Field,
    Drawing,
    Stop,
    Caution,
    Note,
    Good,
}
