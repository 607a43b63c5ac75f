using System.Collections.Frozen;
using TrimOut.Core.Phases;

namespace TrimOut.Core.Plans.Photos;

/// <summary>Words in the name of a picture that say what it shows: common practice, no published source.</summary>
internal static class PhaseWords
{
    private static readonly FrozenDictionary<string, Phase> Words = new (Phase Phase, string[] Words)[]
    {
        (Phase.WalkThrough, ["WALK", "WALKTHROUGH", "FRAMING", "OPENING"]),
        (Phase.RoughIn, ["ROUGH", "ROUGHIN", "WALL", "OPENWALL", "CABLE", "STUD", "STUDS"]),
        (Phase.CloseIn, ["CLOSEIN", "DRYWALL", "PLASTER"]),
        (Phase.Measure, ["MEASURE", "MEASURED", "TAPE"]),
        (Phase.Order, ["ORDER", "ORDERED"]),
        (Phase.Receive, ["RECEIVE", "RECEIVED", "BOX", "DELIVERY", "DELIVERED", "DAMAGE", "DAMAGED", "SERIAL"]),
        (Phase.Hang, ["HANG", "HUNG", "BRACKET", "BRACKETS"]),
        (Phase.Power, ["POWER", "LANDED", "SPLICE", "SPLICED"]),
        (Phase.Pair, ["PAIR", "PAIRED", "HUB", "REMOTE"]),
        (Phase.Limits, ["LIMIT", "LIMITS"]),
        (Phase.Handover, ["HANDOVER", "FINISHED", "FINAL"]),
    }.SelectMany(p => p.Words.Select(w => (p.Phase, Word: w))).ToFrozenDictionary(w => w.Word, w => w.Phase, StringComparer.Ordinal);

    /// <summary>The phase that the words name, and by which word; null where they name none or several.</summary>
    /// <param name="words">In capitals.</param>
    public static (Phase Phase, string Word)? In(IEnumerable<string> words) =>
        words.Where(Words.ContainsKey).Select(w => (Phase: Words[w], Word: w.ToLowerInvariant())).DistinctBy(w => w.Phase).ToList() is [var one] ? one : null;
}
