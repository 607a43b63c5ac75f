using System.Globalization;
using System.Text;
using TrimOut.Core;
using TrimOut.Core.Houses;
using TrimOut.Core.Kits;
using TrimOut.HouseFile.Files;

namespace TrimOut.Desks;

/// <summary>
/// Writes parts into a folder, each under its sort and name. Names that make one file name get a number, so that no part takes the place of another.
/// </summary>
/// <param name="folder">The folder; made when it is not there.</param>
internal sealed class PartsKept(string folder)
{
    private const int LongestStem = 60;
    private const int MostFiles = 9999;
    private readonly HashSet<string> _written = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The name that another text of the part just written was kept under, as it was; null where there was none.</summary>
    public string? Older { get; private set; }

    /// <summary>
    /// Whether a part would take the place of one with a value that was checked against its sheet, and that it has not or not so: a value that was checked
    /// against no sheet or edition that is named is none.
    /// </summary>
    public bool IsWeaker(PartSheet part) => Numbered(Path.Combine(folder, Stem(part))).First(f => IsFor(f, part)) is var file && File.Exists(file)
        && PartFolder.Read(file) is { Ok: true } there
        && there.Value.Values.Any(was => was.Held && !part.Beside(there.Value).Values.Any(v => v.Held && v.Fact == was.Fact));

    /// <summary>Writes a part.</summary>
    /// <returns>The file.</returns>
    /// <exception cref="UnauthorizedAccessException">There is no right to write there; the message says what to do.</exception>
    /// <exception cref="IOException">It can't be written; the message says why.</exception>
    public string Write(PartSheet part)
    {
        var bytes = Encoding.UTF8.GetBytes(PartText.Write(part));
        Older = null;
        try
        {
            UserFolder.Make(folder);
            var file = Numbered(Path.Combine(folder, Stem(part))).First(f => !_written.Contains(f) && IsFor(f, part));
            // What says the same in other units, or with remarks, stays as somebody has it.
            if (File.Exists(file) && PartFolder.Read(file) is { Ok: true, Value: { WhyNoneCounts: null } same } && PartText.IsSame(same, part))
            {
                _written.Add(file);
                return file;
            }
            if (File.Exists(file) && !bytes.AsSpan().SequenceEqual(PlainFile.ReadAll(file, PartFolder.MostBytes)))
            {
                Older = Enumerable.Range(1, MostFiles)
                    .Select(n => string.Create(CultureInfo.InvariantCulture, $"{file}.{PartFolder.Older}{n}")).First(f => !Path.Exists(f));
                File.Move(file, Older);
            }
            OwnFile.Write(file, bytes);
            _written.Add(file);
            return file;
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException)
        {
            var why = $"{PlainFile.WhyNotWritten(folder, failed)} To keep parts in another folder: trimout kit-out HOUSE --kit FOLDER";
            throw failed is UnauthorizedAccessException ? new UnauthorizedAccessException(why, failed) : new IOException(why, failed);
        }
    }

    private static string Stem(PartSheet part)
    {
        var name = new string([.. part.Name.Trim().Select(c => char.IsLetterOrDigit(c) || c is '-' or '_' ? char.ToLowerInvariant(c) : '-')]);
        return $"{KebabCase.Of(part.Kind)}-{(name.Length > LongestStem ? name[..LongestStem] : name)}";
    }

    private static IEnumerable<string> Numbered(string stem) => Enumerable.Range(1, MostFiles).Select(n =>
        n == 1 ? stem + PartFolder.Ending : string.Create(CultureInfo.InvariantCulture, $"{stem}-{n}{PartFolder.Ending}"));

    /// <summary>Whether a file is free, or of the same part, or one that nobody can read and that is kept beside.</summary>
    private static bool IsFor(string file, PartSheet part) => !Path.Exists(file)
        || (File.Exists(file) && (PartFolder.Read(file) is not { Ok: true } there
            || (there.Value.Kind == part.Kind && SameName.Comparer.Equals(there.Value.Name, part.Name))));
}
