using System.Diagnostics;
using System.Globalization;
using Markdig;
using TrimOut.Core.Checks;
using TrimOut.Core.Facts;
using TrimOut.Core.Houses;
using TrimOut.Core.Plans.Cutting;
using TrimOut.Papers;
using TrimOut.Testing;

namespace TrimOut.Benchmarks.Papers;

/// <summary>
/// All papers of a house, as Markdown with drawings and as pages, beside Markdig converting exactly the Markdown that they hold; in turns, in one run.
/// </summary>
/// <remarks>
/// Every paper written from the house, every drawing and code, every page; then the checks and the cut plans, which are worked out once for a house and for
/// all of its papers, and all of it together.
/// </remarks>
internal static class PapersBesideMarkdig
{
    private static readonly DateOnly Day = new(2026, 9, 30);
    private static readonly MarkdownPipeline Bare = new MarkdownPipelineBuilder().UsePipeTables().DisableHtml().Build();

    public static void Measure(int[] sizes)
    {
        foreach (var windows in sizes)
        {
            var log = NotPulledYet(windows);
            var data = new PaperData(log, Day, CheckReport.Of(log.House));
            var (checks, cuts) = (new Best(), new Best());
            var markdown = PaperList.All.Select(p => p.Write(data).Markdown).ToArray();
            var times = windows > 1000 ? 7 : 31;
            var all = PaperList.All.Select(p => (Paper: p, Written: new Best(), Page: new Best(), Peer: new Best())).ToArray();
            for (var time = 0; time < times; time++)
            {
                checks.Take(() => CheckReport.Of(log.House));
                cuts.Take(() => CutPlans.Of(log.House));
                for (var at = 0; at < all.Length; at++)
                {
                    WrittenPaper? written = null;
                    var text = markdown[at];
                    var (paper, write, page, peer) = all[at];
                    // A house is seen anew each time, so that what it looks up is worked out inside the measure.
                    write.Take(() => written = paper.Write(data));
                    page.Take(() => written!.ToHtml());
                    peer.Take(() => Markdown.ToHtml(text, Bare));
                }
            }
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{windows} windows"));
            Console.WriteLine("  paper             Markdown KB   written ms   page ms   Markdig ms   ratio   allocated MB   Markdig MB");
            foreach (var (paper, write, page, peer) in all)
                Print(paper.Id, markdown[Array.FindIndex(all, a => a.Paper == paper)].Length, write, page, peer);
            var (writing, pages, peers) = (Best.Sum(all.Select(a => a.Written)), Best.Sum(all.Select(a => a.Page)), Best.Sum(all.Select(a => a.Peer)));
            Print("all papers", markdown.Sum(m => m.Length), writing, pages, peers);
            Print("and checks", markdown.Sum(m => m.Length), Best.Sum([writing, checks]), pages, peers);
            Print("and cut plans", markdown.Sum(m => m.Length), Best.Sum([writing, checks, cuts]), pages, peers);
        }
    }

    private static void Print(string name, int length, Best write, Best page, Best peer) => Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
        $"  {name,-16} {length / 1000.0,12:0.0} {write.Milliseconds,12:0.00} {page.Milliseconds,9:0.00} {peer.Milliseconds,12:0.00} " +
            $"{(write.Milliseconds + page.Milliseconds) / peer.Milliseconds,7:0.00} {(write.Bytes + page.Bytes) / 1e6,14:0.0} {peer.Bytes / 1e6,12:0.0}"));

    /// <summary>A house in which every cable is still to be cut, so that the pull sheet has its cut list.</summary>
    private static Core.History.HouseLog NotPulledYet(int windows)
    {
        var job = BigHouse.Of(windows);
        var draft = job.House.Units.Aggregate(new Core.History.Draft("not pulled yet"),
            (d, unit) => d.PutStored(unit.Id, UnitFacts.Step.Field("cable-pulled"), null));
        return job.Do(draft).Scribe.Log;
    }

    /// <summary>The best of several times, and what was allocated then.</summary>
    private sealed class Best
    {
        public double Milliseconds { get; private set; } = double.MaxValue;

        public long Bytes { get; private set; } = long.MaxValue;

        public static Best Sum(IEnumerable<Best> all) => new() { Milliseconds = all.Sum(a => a.Milliseconds), Bytes = all.Sum(a => a.Bytes) };

        public void Take(Action action)
        {
            var (before, start) = (GC.GetAllocatedBytesForCurrentThread(), Stopwatch.GetTimestamp());
            action();
            Milliseconds = Math.Min(Milliseconds, Stopwatch.GetElapsedTime(start).TotalMilliseconds);
            Bytes = Math.Min(Bytes, GC.GetAllocatedBytesForCurrentThread() - before);
        }
    }
}
