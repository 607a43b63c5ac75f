using Google.OrTools.Sat;
using TrimOut.Core.Plans.Cutting;

namespace TrimOut.Core.Tests.Plans.Cutting;

/// <summary>The cut plan as a model for a general exact solver: the outside judge of ours.</summary>
public sealed class ExactCutModel
{
    private readonly CutOrder _order;
    private readonly long _unit;
    private readonly (long Length, bool ToBuy)[] _boxes;
    private readonly CpModel _model = new();
    private readonly BoolVar[,] _in;
    private readonly BoolVar[] _used;

    /// <param name="order">The order; every length a whole number of units.</param>
    /// <param name="newBoxes">How many new boxes there may be.</param>
    /// <param name="unit">The unit, nm.</param>
    public ExactCutModel(CutOrder order, int newBoxes, long unit)
    {
        (_order, _unit) = (order, unit);
        _boxes =
        [
            .. order.Boxes.OrderByDescending(b => b.Length).Select(b => (b.Length.Nanometres / unit, false)),
            .. Enumerable.Repeat((order.NewBox?.Nanometres / unit ?? 0, true), newBoxes),
        ];
        _in = new BoolVar[order.Pieces.Length, _boxes.Length];
        _used = [.. _boxes.Select((_, b) => _model.NewBoolVar($"u{b}"))];
        for (var p = 0; p < order.Pieces.Length; p++)
        {
            for (var b = 0; b < _boxes.Length; b++)
                _in[p, b] = _model.NewBoolVar($"x{p},{b}");
            var piece = p;
            _model.AddExactlyOne(Enumerable.Range(0, _boxes.Length).Select(b => _in[piece, b]));
        }
        for (var b = 0; b < _boxes.Length; b++)
        {
            _model.Add(Filled(b) <= (_boxes[b].Length + Loss) * _used[b]);
            foreach (var bundle in Enumerable.Range(0, order.Pieces.Length).Where(p => order.Pieces[p].Bundle is not null).GroupBy(p => order.Pieces[p].Bundle)
                .Where(g => g.Count() > 1))
                _model.AddAtMostOne(bundle.Select(p => _in[p, b]));
            if (b > 0 && _boxes[b] == _boxes[b - 1])
                _model.AddImplication(_used[b], _used[b - 1]);
        }
        // Says nothing new, and gives the solver a bound that it does not find by itself.
        _model.Add(LinearExpr.WeightedSum(_used, _boxes.Select(b => b.Length + Loss)) >= order.Pieces.Sum(p => p.Length.Nanometres / unit + Loss));
    }

    private long Loss => _order.LossPerCut.Nanometres / _unit;

    private LinearExpr ToBuy => LinearExpr.WeightedSum(_used, _boxes.Select(b => b.ToBuy ? 1L : 0L));

    private LinearExpr Opened => LinearExpr.Sum(_used);

    private LinearExpr OpenedLength => LinearExpr.WeightedSum(_used, _boxes.Select(b => b.Length));

    /// <summary>Gives the solver a packing to begin with.</summary>
    public void Hint(int[] boxOf)
    {
        for (var p = 0; p < boxOf.Length; p++)
        {
            for (var b = 0; b < _boxes.Length; b++)
                _model.AddHint(_in[p, b], boxOf[p] == b ? 1 : 0);
        }
    }

    /// <summary>The fewest boxes, bought ones counting most; null when the time did not do for any answer.</summary>
    public (int Boxes, bool Proven)? FewestBoxes(double seconds)
    {
        _model.Minimize((_boxes.Length + 1) * ToBuy + Opened);
        var (solver, status) = Solve(seconds);
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? (_used.Count(u => solver.BooleanValue(u)), status == CpSolverStatus.Optimal)
            : null;
    }

    /// <summary>All four figures at their best, one after the other; null when it can't be done at all.</summary>
    public (int ToBuy, int Opened, long OpenedLength, long LongestLeft)? All()
    {
        if (Least(ToBuy) is not { } toBuy)
            return null;
        var opened = Least(Opened)!.Value;
        var length = Least(OpenedLength)!.Value;
        var left = _model.NewIntVar(0, _boxes.Max(b => b.Length), "left");
        var which = _boxes.Select((_, b) => _model.NewBoolVar($"w{b}")).ToArray();
        _model.AddExactlyOne(which);
        for (var b = 0; b < _boxes.Length; b++)
        {
            _model.AddImplication(which[b], _used[b]);
            // What is left after the last cut, or nothing where the last run ends the box.
            var some = _model.NewIntVar(0, _boxes[b].Length, $"l{b}");
            _model.AddMaxEquality(some, [LinearExpr.Constant(0), _boxes[b].Length - Filled(b)]);
            _model.Add(left <= some).OnlyEnforceIf(which[b]);
        }
        return ((int)toBuy, (int)opened, length, -Least(-left)!.Value);
    }

    private LinearExpr Filled(int box) => LinearExpr.WeightedSum(
        Enumerable.Range(0, _order.Pieces.Length).Select(p => _in[p, box]),
        _order.Pieces.Select(p => p.Length.Nanometres / _unit + Loss));

    private long? Least(LinearExpr figure)
    {
        _model.Minimize(figure);
        var (solver, status) = Solve(300);
        if (status == CpSolverStatus.Infeasible)
            return null;
        if (status != CpSolverStatus.Optimal)
            throw new InvalidOperationException($"The outside solver did not finish: {status}.");
        var value = (long)Math.Round(solver.ObjectiveValue);
        _model.Add(figure == value);
        return value;
    }

    private (CpSolver, CpSolverStatus) Solve(double seconds)
    {
        var solver = new CpSolver
        { StringParameters = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"max_time_in_seconds:{seconds},num_workers:2") };
        return (solver, solver.Solve(_model));
    }
}
