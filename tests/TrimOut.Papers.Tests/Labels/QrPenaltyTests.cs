using TrimOut.Papers.Labels;

namespace TrimOut.Papers.Tests.Labels;

/// <summary>ISO/IEC 18004, 7.8.3, table 11: what speaks against a mask.</summary>
public class QrPenaltyTests
{
    // 10 lines of 5 are 3 points each, 16 blocks of two by two 3 points each, and all dark is 50 % off the half: 10 steps of 10 points.
    [Fact]
    public void AllDarkHasLinesBlocksAndItsShadeAgainstIt() => Assert.Equal(10 * 3 + 16 * 3 + 100, QrPenalty.Of([.. Enumerable.Repeat((byte)1, 25)], 5));

    [Theory]
    [InlineData("10111010000", 40)]
    [InlineData("00001011101", 40)]
    [InlineData("000010111010000", 80)]
    [InlineData("10111010001", 0)]
    public void WhatLooksLikeAFinderWithFourLightFieldsBesideItCountsOnBothSides(string row, int more)
    {
        // In a chessboard of rows the same row stands in every second one, and turned in the others: no column and no block says anything.
        var fields = Enumerable.Range(0, row.Length).SelectMany(r => row.Select(f => (byte)(r % 2 == 0 ? f - '0' : '1' - f))).ToArray();
        Assert.Equal(more * ((row.Length + 1) / 2), QrPenalty.Of(fields, row.Length) - Told(fields, row.Length, like: 0));
    }

    // Sizes before, at and past those that are looked at in one piece.
    [Theory]
    [InlineData(10)]
    [InlineData(11)]
    [InlineData(25)]
    [InlineData(54)]
    [InlineData(58)]
    [InlineData(59)]
    [InlineData(64)]
    [InlineData(65)]
    [InlineData(118)]
    [InlineData(177)]
    public void ItIsWhatCountingFieldByFieldGives(int side)
    {
        var roll = new Random(side);
        for (var time = 0; time < 10; time++)
        {
            // Mostly long lines, with few changes of shade.
            var (field, fields) = ((byte)0, new byte[side * side]);
            for (var at = 0; at < fields.Length; at++)
                fields[at] = field = roll.Next(time + 2) == 0 ? (byte)(1 - field) : field;
            Assert.Equal(Told(fields, side, like: 40), QrPenalty.Of(fields, side));
        }
    }

    private static int Told(byte[] fields, int side, int like)
    {
        var lines = Enumerable.Range(0, side).SelectMany(a => new[]
        {
            string.Concat(Enumerable.Range(0, side).Select(b => fields[a * side + b])),
            string.Concat(Enumerable.Range(0, side).Select(b => fields[b * side + a])),
        });
        var blocks = Enumerable.Range(0, (side - 1) * (side - 1)).Count(at => (at / (side - 1) * side + at % (side - 1)) is var corner
            && fields[corner] == fields[corner + 1] && fields[corner] == fields[corner + side] && fields[corner] == fields[corner + side + 1]);
        var percent = 100.0 * fields.Count(f => f == 1) / fields.Length;
        return lines.Sum(l => Same(l) + like * (Times(l, "10111010000") + Times(l, "00001011101"))) + 3 * blocks
            + 10 * (int)(Math.Abs(percent - 50) / 5 + 1e-9);
    }

    private static int Same(string line)
    {
        var points = 0;
        for (int from = 0, to; from < line.Length; from = to)
        {
            for (to = from; to < line.Length && line[to] == line[from];)
                to++;
            points += to - from >= 5 ? to - from - 2 : 0;
        }
        return points;
    }

    private static int Times(string line, string part) =>
        Enumerable.Range(0, line.Length).Count(at => string.CompareOrdinal(line, at, part, 0, part.Length) == 0);
}
