using System.CommandLine;
using System.Globalization;
using TrimOut.Core.History;
using TrimOut.Core.Units;
using TrimOut.HouseFile;
using TrimOut.HouseFile.Files;

namespace TrimOut.Verbs;

/// <summary><c>trimout merge</c>: takes another copy's changes into a house.</summary>
internal static class MergeVerb
{
    public static Command Build()
    {
        var path = Common.House();
        var other = new Argument<string>("OTHER") { Description = "The other copy, or a folder or file with its history as text; it is only read." };
        var dry = new Option<bool>("--try") { Description = "Only show what would come in." };
        var verb = new Command("merge",
            "Take in what was done on another copy of the house. Ends with 2 when the two disagree about something.") { path, other, dry, Common.GoOn };
        verb.SetAction(parsed =>
        {
            var look = Look.By(parsed);
            var (house, scribe) = HouseSource.Open(parsed.GetRequiredValue(path), LoginName.Now);
            using (house)
            {
                var merge = Merge.Of(scribe.Log, look.At(parsed.GetRequiredValue(other))).OrEnd(ExitCode.BadData);
                foreach (var change in merge.New)
                    Common.Row(change.SaidAt.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture), change.By, change.What);
                if (!parsed.GetValue(dry) && !merge.New.IsEmpty)
                    house.Take(merge.New);
                var uncounted = HouseSource.Tell(merge.Merged);
                Common.Say(string.Create(CultureInfo.InvariantCulture,
                    $"{NumberText.Counted(merge.New.Length, "change")} {(parsed.GetValue(dry) ? "would come in: this was a try" : "came in")}."));
                foreach (var conflict in merge.Conflicts)
                    Common.Say($"{ConflictsVerb.Line(conflict)} To choose: trimout conflicts {ShellWord.Of(parsed.GetRequiredValue(path))}");
                foreach (var name in merge.Namesakes)
                {
                    Common.Say($"There is more than one {name}: each copy added one. "
                        + "Give one of them another name, or remove it if both are the same.");
                }
                return look.End(merge.Disagreements.IsEmpty && merge.Removals.IsEmpty && merge.Namesakes.IsEmpty && uncounted == 0
                    ? ExitCode.Fine : ExitCode.LeftOut);
            }
        });
        return verb;
    }
}
