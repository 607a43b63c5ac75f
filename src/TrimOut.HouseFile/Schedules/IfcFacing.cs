namespace TrimOut.HouseFile.Schedules;

/// <summary>
/// Where the windows of a model look out to. A window lies in the plane of its placement's X and Z (ISO 16739, IfcWindow), so it looks along Y; the model does
/// not say whether forth or back. It is taken to look away from the middle of the windows of its storey, which is common practice and no published rule, and
/// fails in a courtyard.
/// </summary>
internal static class IfcFacing
{
    // Placements of placements: no model has more, and one that goes in a circle ends here.
    private const int Deepest = 64;

    // As far from the middle, seen along where it looks, as makes it clear which of the two ways is out: of the way to the farthest window.
    private const double Clear = 0.05;

    private readonly record struct Vector(double X, double Y, double Z)
    {
        public static Vector operator +(Vector a, Vector b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

        public static Vector operator *(double by, Vector v) => new(by * v.X, by * v.Y, by * v.Z);

        public double Dot(Vector other) => X * other.X + Y * other.Y + Z * other.Z;

        public Vector Cross(Vector o) => new(Y * o.Z - Z * o.Y, Z * o.X - X * o.Z, X * o.Y - Y * o.X);

        public Vector Unit => Math.Sqrt(Dot(this)) is var length and > 1e-12 ? (1 / length) * this : this;
    }

    private readonly record struct Frame(Vector Origin, Vector X, Vector Y, Vector Z)
    {
        public static Frame World { get; } = new(default, new(1, 0, 0), new(0, 1, 0), new(0, 0, 1));

        public Vector Turned(Vector v) => v.X * X + v.Y * Y + v.Z * Z;

        public Frame Inside(Frame inner) => new(Origin + Turned(inner.Origin), Turned(inner.X), Turned(inner.Y), Turned(inner.Z));
    }

    /// <summary>Degrees from north over east of each window for which it is clear, by its number.</summary>
    public static Dictionary<int, int> Of(IfcModel model)
    {
        var placed = model.Windows.Select(w => (Window: w, Frame: Placed(model, w.Reference(5), 0), Storey: model.StoreyOf(w)?.Id))
            .Where(w => w.Frame is not null).ToList();
        var facing = new Dictionary<int, int>();
        foreach (var storey in placed.GroupBy(w => w.Storey).Select(g => g.ToList()))
        {
            var middle = (1.0 / storey.Count) * storey.Aggregate(default(Vector), (sum, w) => sum + w.Frame!.Value.Origin);
            var farthest = storey.Max(w => Math.Sqrt(Flat(w.Frame!.Value.Origin, middle).Dot(Flat(w.Frame!.Value.Origin, middle))));
            foreach (var (window, frame, _) in storey)
            {
                var along = new Vector(frame!.Value.Y.X, frame.Value.Y.Y, 0).Unit;
                var away = Flat(frame.Value.Origin, middle).Dot(along);
                if (along.Dot(along) > 0.5 && Math.Abs(away) > Clear * farthest)
                    facing[window.Id] = Azimuth(model, Math.Sign(away) * along);
            }
        }
        return facing;
    }

    private static Vector Flat(Vector at, Vector from) => new(at.X - from.X, at.Y - from.Y, 0);

    private static int Azimuth(IfcModel model, Vector way)
    {
        var north = model.TrueNorth?.Numbers(0) is [var x, var y, ..] && Math.Abs(x) + Math.Abs(y) > 1e-9 ? new Vector(x, y, 0).Unit : new Vector(0, 1, 0);
        var east = new Vector(north.Y, -north.X, 0);
        return ((int)Math.Round(Math.Atan2(way.Dot(east), way.Dot(north)) * 180 / Math.PI) + 360) % 360;
    }

    private static Frame? Placed(IfcModel model, int? placement, int depth)
    {
        if (depth > Deepest || model.Find(placement) is not { Type: "IFCLOCALPLACEMENT" } local)
            return null;
        if (model.Find(local.Reference(1)) is not { Type: "IFCAXIS2PLACEMENT3D" } axes || Axes(model, axes) is not { } inner)
            return null;
        return local.Reference(0) is not { } outer ? inner : Placed(model, outer, depth + 1)?.Inside(inner);
    }

    /// <summary>ISO 16739, IfcBuildAxes: Z as it is given, X at right angles to it, Y the third.</summary>
    private static Frame? Axes(IfcModel model, StepEntity axes)
    {
        if (Read(model, axes.Reference(0)) is not { } origin)
            return null;
        var z = (Read(model, axes.Reference(1)) ?? Frame.World.Z).Unit;
        var given = Read(model, axes.Reference(2)) ?? Frame.World.X;
        var x = (given + -given.Dot(z) * z).Unit;
        return new Frame(origin, x, z.Cross(x), z);
    }

    private static Vector? Read(IfcModel model, int? id) => model.Find(id)?.Numbers(0) switch
    {
        [var x, var y, var z] => new Vector(x, y, z),
        [var x, var y] => new Vector(x, y, 0),
        _ => null,
    };
}
