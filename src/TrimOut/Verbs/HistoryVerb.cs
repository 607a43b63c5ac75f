using System.CommandLine;
using TrimOut.Core;
using TrimOut.HouseFile.Texts;

namespace TrimOut.Verbs;

/// <summary><c>trimout history</c>: the whole history as text.</summary>
internal static class HistoryVerb
{
    public static Command Build()
    {
        var path = Common.AnyHouse();
        var verb = new Command("history", "Write the whole history to standard output, one change a line (JSON Lines).") { path, Common.GoOn };
        verb.SetAction(parsed =>
        {
            var look = Look.By(parsed);
            Console.Out.Write(ShownText.Json(HistoryText.Write(look.At(parsed.GetRequiredValue(path)))));
            return look.End(ExitCode.Fine);
        });
        return verb;
    }
}
