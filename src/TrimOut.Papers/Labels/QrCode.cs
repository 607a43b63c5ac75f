using QRCoder;

namespace TrimOut.Papers.Labels;

/// <summary>A QR code: ISO/IEC 18004, UTF-8, error correction M, of the smallest version that holds the text.</summary>
internal sealed class QrCode
{
    // The library puts the quiet border around, which readers need; a drawing leaves it free.
    private const int Border = 4;

    private readonly IReadOnlyList<System.Collections.BitArray> _fields;

    private QrCode(IReadOnlyList<System.Collections.BitArray> fields) => _fields = fields;

    /// <summary>Fields a side, without the quiet border.</summary>
    public int Side => _fields.Count - 2 * Border;

    /// <summary>Whether a field is dark.</summary>
    public bool Dark(int row, int column) => _fields[row + Border][column + Border];

    /// <summary>The code of a text; null for one that is too long.</summary>
    public static QrCode? Of(string text)
    {
        try
        {
            using var data = QRCodeGenerator.GenerateQrCode(text, QRCodeGenerator.ECCLevel.M, forceUtf8: true);
            return new QrCode([.. data.ModuleMatrix]);
        }
        catch (QRCoder.Exceptions.DataTooLongException)
        {
            return null;
        }
    }
}
