using System.Text;

namespace TrimOut.Papers.Labels;

/// <summary>A QR code: ISO/IEC 18004, UTF-8, error correction M, of the smallest version that holds the text.</summary>
internal sealed class QrCode
{
    private readonly byte[] _fields;

    private QrCode(byte[] fields, int side) => (_fields, Side) = (fields, side);

    /// <summary>Fields a side, without the quiet border.</summary>
    public int Side { get; }

    /// <summary>Whether a field is dark.</summary>
    public bool Dark(int row, int column) => _fields[row * Side + column] != 0;

    /// <summary>The code of a text; null for one that is too long.</summary>
    public static QrCode? Of(string text)
    {
        var bytes = Encoding.UTF8.GetBytes(text);
        if (QrSize.Holding(bytes.Length) is not { } size)
            return null;
        var symbol = new QrSymbol(size);
        symbol.Fill(QrWords.Of(bytes, size));
        return new QrCode(symbol.Masked(), size.Side);
    }
}
