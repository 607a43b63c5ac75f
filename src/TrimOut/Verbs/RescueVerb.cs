using System.CommandLine;
using TrimOut.Core.History;
using TrimOut.Core.Units;
using TrimOut.Desks;
using TrimOut.HouseFile;
using TrimOut.HouseFile.Rescues;

namespace TrimOut.Verbs;

/// <summary><c>trimout rescue</c>: what is sound in a damaged file, in a new one.</summary>
internal static class RescueVerb
{
    public static Command Build()
    {
        var damaged = new Argument<string>("DAMAGED") { Description = "The damaged file; it is only read." };
        var path = new Argument<string>("PATH") { Description = "The house file to make; nothing may be there yet." };
        var also = new Option<string[]>("--also")
        {
            Description = "Another copy or a backup, to fill gaps from; may be given several times.",
            HelpName = "file"
        };
        var house = new Option<string?>("--house")
        {
            Description = "Which house to bring out of a file that holds several; rescue names them.",
            HelpName = "name"
        };
        var verb = new Command("rescue",
            "Bring what is sound in a damaged house file into a new one, and list what is lost. Ends with 2 when something is.") { damaged, path, also, house };
        verb.SetAction(parsed =>
        {
            var rescued = Rescue.Read(parsed.GetRequiredValue(damaged), parsed.GetValue(also) ?? [], parsed.GetValue(house));
            foreach (var said in rescued.Apart.Concat(rescued.Lost))
                Common.Say(said);
            var isAlone = parsed.GetValue(also) is null or [];
            if (!rescued.Lost.IsEmpty && isAlone && WayBack.ForRescue(Path.GetFullPath(parsed.GetRequiredValue(damaged))) is { } way)
                Common.Say(way);
            if (rescued.Changes.IsEmpty)
                throw new VerbException(ExitCode.BadData, $"Nothing in {parsed.GetRequiredValue(damaged)} could be rescued.");
            HouseLog.Of(rescued.Changes).OrEnd(ExitCode.BadData);
            using var made = HouseOnDisk.Create(NewFile.Of(parsed.GetRequiredValue(path)).OrEnd(ExitCode.Usage), TimeProvider.System, rescued.Changes);
            Common.Say($"Made {made.Where} with {NumberText.Counted(rescued.Changes.Length, "change")}.");
            return rescued.Lost.IsEmpty ? ExitCode.Fine : ExitCode.LeftOut;
        });
        return verb;
    }
}
