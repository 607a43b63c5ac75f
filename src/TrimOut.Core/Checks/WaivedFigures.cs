using TrimOut.Core.Houses;
using TrimOut.Core.Wording;

namespace TrimOut.Core.Checks;

/// <summary>Whether a waiver was given for just these figures.</summary>
internal static class WaivedFigures
{
    /// <summary>Whether a finding has the figures that a waiver was given for, whatever it is worded like now.</summary>
    /// <remarks>
    /// Waivers of earlier releases hold where they held then: with figures in which messages had no tags, or in which something typed could be taken for
    /// several figures, by these and the words beside them; with the words of their day alone, by these.
    /// </remarks>
    public static bool Are(Waiver waiver, Sentence message, House house) => waiver switch
    {
        { Arguments: { } arguments } when Sentence.AreAsNow(arguments) => arguments == message.Figures,
        { Arguments: { } arguments, Figures: var said } =>
            (arguments == message.FiguresAs(StoredAs.Members) || arguments == message.FiguresAs(StoredAs.Shown)
                || (arguments == message.FiguresAs(StoredAs.Untagged)
                    && (!message.IsTagged || (said is not null && new SaidThen(message).HasItsWords(said)))))
            && (!message.HasPartingSigns || said is null || new SaidThen(message).IsIn(said, house)),
        { Figures: { } said } => new SaidThen(message).IsIn(said, house),
        _ => false,
    };
}
