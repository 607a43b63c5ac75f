using TrimOut.Core.Houses;

namespace TrimOut.Core.Checks;

/// <summary>The sheet of a check that is held against each of its subjects by itself.</summary>
internal sealed class SubjectSheet : CheckSheet
{
    private readonly SubjectCheck _check;
    private readonly string[] _ids;
    private readonly HashSet<long> _listReads;
    private readonly Judged[] _judged;
    private readonly long[][] _reads;

    private SubjectSheet(SubjectCheck check, string[] ids, HashSet<long> listReads, Judged[] judged, long[][] reads) =>
        (_check, _ids, _listReads, _judged, _reads) = (check, ids, listReads, judged, reads);

    public override object Subjects => _ids;

    public override int Judgements => _ids.Length;

    protected override IEnumerable<Judged> Said => _judged;

    public static SubjectSheet Of(SubjectCheck check, HouseState house)
    {
        var recorder = new ReadRecorder();
        var ids = recorder.Record(() => check.SubjectIds(new House(house)).ToArray(), out var listReads);
        var sheet = new SubjectSheet(check, ids, [.. listReads], new Judged[ids.Length], new long[ids.Length][]) { Check = check };
        for (var at = 0; at < ids.Length; at++)
            sheet.Judge(at, house, recorder);
        return sheet;
    }

    public override long[] Reads(int judgement) => _reads[judgement];

    public override CheckSheet After(HouseState house, HashSet<long> changed, IReadOnlyList<int> touched)
    {
        var recorder = new ReadRecorder();
        SubjectSheet sheet;
        if (changed.Overlaps(_listReads))
        {
            var ids = recorder.Record(() => _check.SubjectIds(new House(house)).ToArray(), out var listReads);
            var again = touched.ToHashSet();
            var before = _ids.Select((id, at) => (id, at)).Where(s => !again.Contains(s.at)).ToDictionary(s => s.id, s => s.at);
            sheet = new SubjectSheet(_check, ids, [.. listReads], new Judged[ids.Length], new long[ids.Length][]) { Check = _check };
            for (var at = 0; at < ids.Length; at++)
            {
                if (before.TryGetValue(ids[at], out var was))
                    (sheet._judged[at], sheet._reads[at]) = (_judged[was], _reads[was]);
                else
                    sheet.Judge(at, house, recorder);
            }
            return sheet;
        }
        if (touched.Count == 0)
            return this;
        sheet = new SubjectSheet(_check, _ids, _listReads, (Judged[])_judged.Clone(), (long[][])_reads.Clone()) { Check = _check };
        foreach (var at in touched)
            sheet.Judge(at, house, recorder);
        return sheet;
    }

    /// <summary>Judges one subject on a view of the house that nothing was read of yet: whatever it keeps for itself was then read for this judgement.</summary>
    private void Judge(int at, HouseState house, ReadRecorder recorder)
    {
        var view = new House(house);
        _judged[at] = Judged.Of(recorder, () => _check.RunOn(_check.Find(view, _ids[at])), out _reads[at]);
    }
}
