using TrimOut.Core.Houses;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks;

/// <summary>Whether a waiver was given for just these figures.</summary>
internal static class WaivedFigures
{
    /// <summary>Whether a finding has the figures that a waiver was given for, whatever it is worded like now.</summary>
    /// <remarks>
    /// Waivers of earlier releases hold where they held then: with figures in which messages had no tags, by these and the words beside them; with
    /// the words of their day alone, by these.
    /// </remarks>
    public static bool Are(Waiver waiver, Sentence message, House house) => waiver switch
    {
        { Arguments: { } arguments } when arguments == message.Figures => true,
        { Arguments: { } arguments, Figures: var said } =>
            arguments == message.FormerFigures && (!message.IsTagged || (said is not null && new SaidThen(message).HasItsWords(said))),
        { Figures: { } said } => new SaidThen(message).IsIn(said, house),
        _ => false,
    };
}
