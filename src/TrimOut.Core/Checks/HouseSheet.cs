using TrimOut.Core.Houses;

namespace TrimOut.Core.Checks;

/// <summary>The sheet of a check that is held against the house as a whole.</summary>
internal sealed class HouseSheet : CheckSheet
{
    private readonly Judged _judged;
    private readonly long[] _reads;

    private HouseSheet(Judged judged, long[] reads) => (_judged, _reads) = (judged, reads);

    public override object Subjects => Check;

    public override int Judgements => 1;

    protected override IEnumerable<Judged> Said => [_judged];

    public static HouseSheet Of(ICheck check, HouseState house)
    {
        var view = new House(house);
        return new HouseSheet(Judged.Of(new ReadRecorder(), () => check.Run(view), out var reads), reads) { Check = check };
    }

    public override long[] Reads(int judgement) => _reads;

    public override CheckSheet After(HouseState house, HashSet<long> changed, IReadOnlyList<int> touched) => touched.Count == 0 ? this : Of(Check, house);
}
