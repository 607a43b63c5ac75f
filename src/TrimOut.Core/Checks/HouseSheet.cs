using TrimOut.Core.Houses;

namespace TrimOut.Core.Checks;

/// <summary>The sheet of a check that is held against the house as a whole.</summary>
internal sealed class HouseSheet : CheckSheet
{
    private readonly Judged _judged;
    private readonly HashSet<long> _reads;

    private HouseSheet(Judged judged, HashSet<long> reads) => (_judged, _reads) = (judged, reads);

    public override object Subjects => Check;

    public override int Judgements => 0;

    protected override IEnumerable<Judged> Said => [_judged];

    public static HouseSheet Of(ICheck check, HouseState house)
    {
        var judged = ReadRecorder.Record(() => Judged.Of(check.Run(new House(house))), out var reads);
        return new HouseSheet(judged, reads) { Check = check };
    }

    public override ReadOnlySpan<long> Reads(int judgement) => [];

    public override CheckSheet After(HouseState house, HashSet<long> changed, IReadOnlyList<int> touched) => changed.Overlaps(_reads) ? Of(Check, house) : this;
}
