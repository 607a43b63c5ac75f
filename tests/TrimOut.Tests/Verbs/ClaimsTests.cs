using TrimOut.Core.Facts;
using TrimOut.HouseFile;
using TrimOut.Testing;

namespace TrimOut.Tests.Verbs;

/// <summary>A warranty claim reads the same wherever it shows: among what is due, in all houses, by the checks, on the form and in the book.</summary>
public sealed class ClaimsTests : IDisposable
{
    private readonly RunTrimOut _run = new();

    public ClaimsTests()
    {
        var job = new TestJob(store: new MemoryStore("elm")).Window("W01").Window("W02").Window("W03").SayOf("", HouseFacts.AcceptedOn, "2026-03-01");
        Directory.CreateDirectory(_run.In("houses"));
        HouseOnDisk.Create(_run.In("houses/elm.trimout"), TimeProvider.System, job.Scribe.Log.Changes).Dispose();
        Serve("W01 failed 2026-03-10 @Ash, claim C-5, motor dead", "W02 repaired 2026-03-11 @Ash, claim C-6, granted, wand loose",
            "W03 failed 2026-03-12 @Ash, claim C-7, refused, motor dead");
    }

    public void Dispose() => _run.Dispose();

    private void Serve(params string[] lines)
    {
        var set = _run.RunWith(string.Concat(lines.Select(l => $"service\tnew\t{l}\n")), "set", "houses/elm.trimout");
        Assert.True(set.Code == 0, set.Error);
    }

    private string[] Said(params string[] arguments) =>
        _run.Run(arguments).Output.ReplaceLineEndings("\n").Split('\n', StringSplitOptions.RemoveEmptyEntries);

    private string[] Service() => Said("service", "houses/elm.trimout", "--date", "2026-04-10");

    private string Paper(string paper)
    {
        Assert.Equal(0, _run.Run("paper", "houses/elm.trimout", paper, "--date", "2026-04-10", "--out", "papers").Code);
        return File.ReadAllText(_run.In($"papers/elm-{paper}.md"));
    }

    [Fact]
    public void AnOpenClaimWaitsForTheMakerAndOneThatWasRefusedDoesNot()
    {
        var said = Service();
        Assert.Contains("due\tnow\tW01 failed 2026-03-10: waits for the maker, claim C-5.", said);
        Assert.Contains("due\tnow\tW03 failed 2026-03-12: not repaired, and claim C-7 came to refused.", said);
        Assert.DoesNotContain(said, l => l.StartsWith("due\t", StringComparison.Ordinal) && l.Contains("C-6", StringComparison.Ordinal));
        Assert.Equal(["W01 C-5 ", "W02 C-6 granted", "W03 C-7 refused"],
            said.Select(l => l.Split('\t')).Where(c => c[0] == "done").Select(c => $"{c[2]} {c[8]} {c[9]}"));
        Assert.Contains("1 for maker", Said("firm", "houses", "--list", "waiting", "--date", "2026-04-10").Select(l => l.Split('\t')[^1]));
        Assert.Contains("claim C-5 came to (W01 failed 2026-03-10)", string.Join('\n', Said("check", "houses/elm.trimout")), StringComparison.Ordinal);
    }

    /// <summary>What the maker said is written once, with the new unit, by the same number in other letters: it stands at both records.</summary>
    [Fact]
    public void AnOutcomeThatIsWrittenLaterSettlesEveryRecordOfThatClaim()
    {
        Serve("W01 replaced 2026-04-01 @Ash, serial B-7, claim c-5, granted");
        var said = Service();
        Assert.DoesNotContain(said, l => l.StartsWith("due\t", StringComparison.Ordinal) && l.Contains("waits for the maker", StringComparison.Ordinal));
        Assert.Equal(["C-5 granted", "c-5 granted"],
            said.Select(l => l.Split('\t')).Where(c => c[0] == "done" && c[2] == "W01").Select(c => $"{c[8]} {c[9]}"));
        Assert.DoesNotContain("1 for maker", Said("firm", "houses", "--list", "waiting", "--date", "2026-04-10").Select(l => l.Split('\t')[^1]));
        Assert.DoesNotContain("came to (W01", string.Join('\n', Said("check", "houses/elm.trimout")), StringComparison.Ordinal);
    }

    /// <summary>What nobody wrote yet is said as such in the book, and never left blank.</summary>
    [Fact]
    public void TheFormListsWhatIsOpenAndTheBookWhatEachClaimCameTo()
    {
        var (form, book) = (Paper("service-form"), Paper("binder"));
        Assert.Contains("W01 failed 2026-03-10: waits for the maker, claim C-5.", form, StringComparison.Ordinal);
        foreach (var row in new[] { "W01 2026-03-10 failed Ash motor dead C-5 not yet", "W02 2026-03-11 repaired Ash wand loose C-6 granted",
            "W03 2026-03-12 failed Ash motor dead C-7 refused" })
        {
            Assert.Contains(row, book.Split('\n').Select(l => string.Join(' ', l.Split([' ', '|'], StringSplitOptions.RemoveEmptyEntries))));
        }
    }
}
