using System.CommandLine;
using System.Globalization;
using TrimOut.Core;
using TrimOut.Core.History;
using TrimOut.Core.Units;
using TrimOut.Desks;
using TrimOut.HouseFile;
using TrimOut.HouseFile.Files;
using TrimOut.Office;

namespace TrimOut.Verbs.Office;

/// <summary><c>trimout office exchange</c>, <c>send</c> and <c>fetch</c>: each side gets what it lacks, or one of them.</summary>
internal static class ExchangeVerb
{
    public static Command Build() => Build("exchange", sends: true,
        "Send what the office lacks of a house, and take in what was done elsewhere. Ends with 2 where copies disagree, as merge does.");

    public static Command BuildFetch() => Build("fetch", sends: false,
        "Only take in what was done elsewhere on a house. Ends with 2 where copies disagree, as merge does.");

    public static Command BuildSend()
    {
        var path = Common.AnyHouse();
        var verb = new Command("send", "Only send what the office lacks of a house; goes also while another program has it open.")
        {
            path, OfficeVerb.CredentialsOption, Common.GoOn
        };
        verb.SetAction(parsed =>
        {
            var (office, look) = (OfficeVerb.By(parsed), Look.By(parsed));
            var log = look.At(parsed.GetRequiredValue(path));
            var done = Run(office, log, sends: true);
            OfficePlace.Keep(office, log, done.Mark);
            SaySent(done);
            if (done.Merge is { } waits)
                Common.Say($"{NumberText.Counted(waits.New.Length, "change")} from the office {(waits.New.Length == 1 ? "was" : "were")} not taken in. "
                    + $"To do that: trimout office fetch {ShellWord.Of(parsed.GetRequiredValue(path))}");
            return look.End(ExitCode.Fine);
        });
        return verb;
    }

    /// <summary>Exchanges, and says how far it is.</summary>
    public static Exchanged Run(Credentials office, HouseLog log, bool sends) => OfficeVerb.With(office, connection =>
        Exchange.Run(connection, log.Changes.IsEmpty ? throw new VerbException(ExitCode.BadData, "There is no change in that house yet.") : log,
            OfficePlace.MarkOf(office, log), TimeProvider.System, sends, _ => { }, CancellationToken.None));

    private static Command Build(string name, bool sends, string about)
    {
        var path = Common.House();
        var verb = new Command(name, about) { path, OfficeVerb.CredentialsOption };
        verb.SetAction(parsed =>
        {
            var office = OfficeVerb.By(parsed);
            var (house, scribe) = HouseSource.Open(parsed.GetRequiredValue(path), LoginName.Now);
            using (house)
            {
                if (house.ReadOnlyBecause is { } because)
                    throw new VerbException(ExitCode.Of(house.ReadOnlyFault), $"Nothing can be taken in: {because} To only send: trimout office send");
                var done = Run(office, scribe.Log, sends);
                foreach (var change in done.Merge?.New ?? [])
                    Console.Out.WriteLine(string.Create(CultureInfo.InvariantCulture,
                        $"{change.SaidAt:yyyy-MM-dd HH:mm}\t{ShownText.Line(change.By)}\t{ShownText.Line(change.What)}"));
                if (done.Merge is { } merge)
                    house.Take(merge.New);
                OfficePlace.Keep(office, scribe.Log, done.Mark);
                if (sends)
                    SaySent(done);
                Common.Say($"{NumberText.Counted(done.Merge?.New.Length ?? 0, "change")} came in.");
                return done.Merge is { } came && !TellDoubts(came, parsed.GetRequiredValue(path)) ? ExitCode.LeftOut : ExitCode.Fine;
            }
        });
        return verb;
    }

    /// <summary>Says what copies disagree about now.</summary>
    /// <returns>Whether nothing is to be said.</returns>
    private static bool TellDoubts(Merge merge, string path)
    {
        var uncounted = HouseSource.Tell(merge.Merged);
        foreach (var conflict in merge.Conflicts)
            Common.Say($"{ConflictsVerb.Line(conflict)} To choose: trimout conflicts {ShellWord.Of(path)}");
        foreach (var name in merge.Namesakes)
            Common.Say($"There is more than one {name}: each copy added one. Give one of them another name, or remove it if both are the same.");
        return merge.Disagreements.IsEmpty && merge.Removals.IsEmpty && merge.Namesakes.IsEmpty && uncounted == 0;
    }

    private static void SaySent(Exchanged done) => Common.Say(done.NotSent > 0
        ? $"This device may only read this house at the office: nothing was sent, and {NumberText.Counted(done.NotSent, "change")} stayed here."
        : $"{NumberText.Counted(done.Sent, "change")} went to the office.");
}
