using System.Collections.Frozen;
using TrimOut.Core.Houses;

namespace TrimOut.Core.Facts;

/// <summary>Words with which people say, in a text, that something is not there: in English, German and Spanish, whatever their case.</summary>
/// <remarks>
/// A text is evidence, or a fault, only where it says more than that. Whole texts are known, never beginnings: "No. 4711" is a licence,
/// and "no bottom bar" is damage.
/// </remarks>
public static class AbsenceWords
{
    private static readonly FrozenSet<string> Nothing = new[]
    {
        "", "none", "no", "nothing", "nil", "n/a", "na", "n.a", "not any", "not applicable", "none seen", "nothing seen", "none found",
        "no damage", "no damages", "no damage seen", "not damaged", "undamaged", "no obstruction", "no obstructions", "nothing in the way",
        "kein", "keine", "keiner", "keines", "keins", "nein", "nichts", "entfällt", "nicht vorhanden", "kein schaden", "keine schäden", "unbeschädigt",
        "nicht beschädigt", "nichts im weg", "kein hindernis", "keine hindernisse",
        "ninguno", "ninguna", "ningún", "nada", "sin daño", "sin daños", "no hay", "no hay daños", "no aplica", "no procede", "nada en medio",
        "sin obstáculos", "ningún obstáculo",
    }.ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    private static readonly FrozenSet<string> NotYet = new[]
    {
        "nobody", "no one", "noone", "no-one", "nobody knows", "not", "not known", "unknown", "not sure", "don't know", "tbd", "tba", "tbc", "open", "pending",
        "later", "to do", "to be done", "missing", "not there", "not done", "not tested", "untested", "not sealed", "unsealed", "not seen", "not connected",
        "not confirmed", "not checked", "not signed", "not shown", "not told", "not licensed", "unlicensed", "no licence", "no license", "no number",
        "applied for", "in progress", "to follow", "awaited", "beantragt", "wird nachgereicht",
        "no name", "no electrician", "no test", "no seal", "no protection", "no guard", "no photo", "no picture",
        "niemand", "noch offen", "offen", "unbekannt", "nicht bekannt", "nicht", "später", "fehlt", "nicht geprüft", "ungeprüft", "nicht getestet",
        "nicht verschlossen", "nicht gesehen", "nicht angeschlossen", "nicht bestätigt", "nicht erledigt", "nicht gezeigt", "nicht zugelassen",
        "keine zulassung", "keine lizenz", "keine nummer", "kein name", "keine elektrofachkraft", "keine prüfung", "kein test", "kein schutz", "kein foto",
        "kein bild",
        "nadie", "todavía no", "aún no",
        "no se sabe", "desconocido", "desconocida", "pendiente", "por hacer", "por confirmar", "falta", "más tarde", "no probado", "sin probar",
        "no sellado", "sin sellar", "no visto", "no conectado", "no confirmado", "sin nombre", "sin número", "sin licencia", "sin foto", "sin prueba",
        "sin protección", "no revisado", "sin revisar", "en trámite",
    }.ToFrozenSet(StringComparer.OrdinalIgnoreCase);

    /// <summary>Whether a text says that there is nothing: none, no damage, nichts, -.</summary>
    public static bool SayNothing(string text) => Plain(text) is var plain && Nothing.Contains(plain) && !IsUnknown(text);

    /// <summary>Whether a text says no more than that something is not there, not done or not known: none, nobody yet, not tested, ?.</summary>
    public static bool SayNoMore(string text) => Plain(text) is var plain && (Nothing.Contains(plain) || NotYet.Contains(plain));

    /// <summary>A text of an item as evidence: null where it is missing, and where it says no more than that something is missing.</summary>
    /// <param name="item">The item.</param>
    /// <param name="fact">The fact that somebody stands for with a name, a number or a way.</param>
    public static string? Evidence(this Item item, Fact<string> fact) => item.Get(fact) is { } text && !SayNoMore(text) ? text : null;

    private static bool IsUnknown(string text) => text.Contains('?', StringComparison.Ordinal);

    /// <summary>The text without the signs around it, and without the "yet", "noch" or "todavía" that says that it is to come.</summary>
    private static string Plain(string text)
    {
        var plain = string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).Trim(Signs);
        foreach (var end in (string[])[" yet", " so far", " till now", " for now", " bisher", " bislang", " todavía", " aún", " por ahora"])
        {
            if (plain.EndsWith(end, StringComparison.OrdinalIgnoreCase))
                plain = plain[..^end.Length].Trim(Signs);
        }
        foreach (var start in (string[])["noch ", "bisher ", "bislang ", "as yet ", "up to now ", "todavía ", "aún "])
        {
            if (plain.StartsWith(start, StringComparison.OrdinalIgnoreCase) && !NotYet.Contains(plain))
                plain = plain[start.Length..].Trim(Signs);
        }
        return plain;
    }

    private static readonly char[] Signs = [' ', '.', ',', ';', ':', '!', '?', '-', '–', '—', '_', '/', '\\', '(', ')', '"', '\'', '*', '~'];
}
