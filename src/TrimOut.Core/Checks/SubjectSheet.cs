using TrimOut.Core.Houses;

namespace TrimOut.Core.Checks;

/// <summary>The sheet of a check that is held against each of its subjects by itself.</summary>
internal sealed class SubjectSheet : CheckSheet
{
    private readonly SubjectCheck _check;
    private readonly string[] _ids;
    private readonly HashSet<long> _listReads;
    private readonly Judged[] _judged;
    private readonly ReadSets _reads;

    private SubjectSheet(SubjectCheck check, string[] ids, HashSet<long> listReads, Judged[] judged, ReadSets reads) =>
        (_check, _ids, _listReads, _judged, _reads) = (check, ids, listReads, judged, reads);

    public override object Subjects => _ids;

    public override int Judgements => _ids.Length;

    protected override IEnumerable<Judged> Said => _judged;

    public override ReadOnlySpan<long> Reads(int judgement) => _reads[judgement];

    public override CheckSheet After(HouseState house, HashSet<long> changed, IReadOnlyList<int> touched)
    {
        if (changed.Overlaps(_listReads))
            return WithOtherSubjects(house, touched);
        if (touched.Count == 0)
            return this;
        var (recorder, judged, again) = (new ReadRecorder(), (Judged[])_judged.Clone(), new Dictionary<int, long[]>(touched.Count));
        foreach (var at in touched)
        {
            judged[at] = Judged.Of(_check, house, _ids[at], recorder, out var reads);
            again[at] = reads.ToArray();
        }
        return new SubjectSheet(_check, _ids, _listReads, judged, _reads.With(again)) { Check = _check };
    }

    private SubjectSheet WithOtherSubjects(HouseState house, IReadOnlyList<int> touched)
    {
        var again = touched.ToHashSet();
        var before = _ids.Select((id, at) => (id, at)).Where(s => !again.Contains(s.at)).ToDictionary(s => s.id, s => s.at);
        var begun = new Begun(_check, house);
        for (var at = 0; at < begun.Count; at++)
        {
            if (before.TryGetValue(begun[at], out var was))
                begun.Take(_judged[was], _reads[was]);
            else
                begun.Judge();
        }
        return begun.Done();
    }

    /// <summary>A sheet that is filled one subject after the other.</summary>
    internal sealed class Begun
    {
        private readonly SubjectCheck _check;
        private readonly HouseState _house;
        private readonly string[] _ids;
        private readonly HashSet<long> _listReads;
        private readonly Judged[] _judged;
        private readonly ReadSets.Builder _reads;
        private readonly ReadRecorder _recorder = new();
        private int _at;

        public Begun(SubjectCheck check, HouseState house)
        {
            (_check, _house) = (check, house);
            _ids = ReadRecorder.Record(() => check.SubjectIds(new House(house)).ToArray(), out _listReads);
            _judged = new Judged[_ids.Length];
            _reads = new ReadSets.Builder(_ids.Length);
        }

        /// <summary>How many subjects there are.</summary>
        public int Count => _ids.Length;

        /// <summary>The id of a subject.</summary>
        public string this[int at] => _ids[at];

        /// <summary>Judges the next subjects, as far as this one.</summary>
        public void JudgeUpTo(int end)
        {
            while (_at < Math.Min(end, _ids.Length))
                Judge();
        }

        /// <summary>Judges the next subject.</summary>
        public void Judge() => Take(Judged.Of(_check, _house, _ids[_at], _recorder, out var reads), reads);

        /// <summary>Takes over what was said of the next subject.</summary>
        public void Take(Judged judged, ReadOnlySpan<long> reads)
        {
            _judged[_at++] = judged;
            _reads.Add(reads);
        }

        /// <summary>The sheet.</summary>
        public SubjectSheet Done() => new(_check, _ids, _listReads, _judged, _reads.Done()) { Check = _check };
    }
}
