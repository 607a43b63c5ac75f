using System.Collections.Immutable;
using TrimOut.Core.Checks;
using TrimOut.Core.Plans.Cutting;
using TrimOut.Core.Units;

namespace TrimOut.Core.Figures;

/// <summary>The figures of a cut plan: boxes, what each is cut into, and what is left.</summary>
public static class CutFigures
{
    private static readonly Source Plan = new("docs/plans.md: bounds of Martello and Toth, bin completion, column generation of Gilmore and Gomory",
        "fewest boxes to buy, then fewest opened, then least cable in them, then the longest single piece left");

    /// <summary>The figures of the plan for one cable.</summary>
    /// <param name="cuts">The runs and boxes.</param>
    /// <param name="plan">The plan.</param>
    public static ImmutableArray<Figure> Of(CableCuts cuts, CutPlan plan)
    {
        var units = cuts.Order.Units;
        string Show(Length length) => length.ShowRounded(units, LengthScale.Run);
        Figure Row<T>(string name, Plans.Bounded<T> figure, Func<T, string> show)
            where T : IEquatable<T> =>
            new(name, show(figure.Found), Working.Of(Plan.Formula, () =>
            [
                ("found", show(figure.Found)), ("no plan can better", show(figure.Limit)), ("proven", figure.Proven ? "yes" : "no"),
            ]), Plan, []);
        return
        [
            Row("Boxes to buy", plan.ToBuy, n => NumberText.Plain(n)), Row("Boxes opened", plan.Opened, n => NumberText.Plain(n)),
            Row("Cable in the boxes opened", plan.OpenedLength, Show), Row("Longest piece left", plan.LongestLeft, Show),
            .. plan.Boxes.Select(Left),
        ];

        Figure Left(BoxCuts box) => new($"Left in {box.Box.Id}", Show(box.LeftOver), Working.Of("length of the box - its runs - loss of each cut", () =>
        [
            ("box", Show(box.Box.Length)), .. box.Cuts.Select(c => (c.Piece.Id, $"{Show(c.Piece.Length)}, cut at {Show(c.To)}")),
            ("loss per cut", Show(cuts.Order.LossPerCut)),
        ]), Plan, []);
    }
}
