using System.Globalization;
using TrimOut.Core;
using TrimOut.Core.Plans.Firm;
using TrimOut.Papers.FirmPapers;
using TrimOut.Screens.Firm;

namespace TrimOut.Desks.Firm;

/// <summary>Papers over several houses as files.</summary>
internal static class FirmPaperFiles
{
    /// <summary>Writes a paper over houses; those that could not be opened are named on it.</summary>
    /// <param name="paper">The paper.</param>
    /// <param name="rows">The houses.</param>
    /// <param name="others">Houses that there are beside them: those that can't be opened are named on it too, all others as left out, of which
    /// the name of the file speaks too.</param>
    /// <param name="chosen">How the houses were chosen.</param>
    /// <param name="date">The day that stands on it.</param>
    /// <param name="language">The language; null for English.</param>
    /// <param name="folder">The folder to write to.</param>
    /// <param name="over">Whether a file is written over though TrimOut did not write it.</param>
    /// <param name="stop">Stops the writing.</param>
    /// <returns>The files, or which languages there are.</returns>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    /// <exception cref="NotOverwrittenException">
    /// Something that is not TrimOut's, or is over houses of other places, has the name of a file; none was touched.
    /// </exception>
    public static Result<IReadOnlyList<string>> Write(FirmPaper paper, IReadOnlyList<FirmRow> rows, IReadOnlyList<FirmRow> others, ChosenHouses chosen,
        DateOnly date, string? language, string folder, Func<string, bool> over, CancellationToken stop)
    {
        rows = FirmHouses.Once(rows);
        // What is kept of a house that can't be opened now may be old: nobody is sent anywhere by it.
        var read = rows.Where(r => r.Summary is not null && r.Why is null).ToList();
        var data = new FirmData(date, [.. read.Select(r => r.Summary!)],
            paper.NeedsHouses ? [.. read.Select(r => HouseSource.Read(r.Path, goOn: false, aloud: false).Log)] : [],
            [.. rows.Except(read).Concat(others.Where(r => r.Why is not null)).Select(r => r.Name)], stop)
        {
            Elsewhere = [.. others.Where(r => r.Why is null).Select(r => r.Summary).OfType<HouseSummary>()],
            LeftOut = [.. others.Where(r => r.Why is null).Select(r => r.Name)],
            Copies = [.. rows.SelectMany(r => r.Copies).Select(p => Path.GetFileName(p))],
        };
        var stem = string.Create(CultureInfo.InvariantCulture, $"{paper.Id}-{date:yyyy-MM-dd}{chosen.InName}")
            + (data.LeftOut.IsEmpty ? "" : string.Create(CultureInfo.InvariantCulture,
                $"-{read.Count}-of-{read.Count + data.LeftOut.Length + data.Unread.Length}-houses"))
            + (language is null ? "" : $"-{language}");
        return paper.Write(data, language).Then<IReadOnlyList<string>>(
            written => PaperFiles.WriteOverHouses(written, stem, folder, WrittenPapers.OfUser, over, chosen.Places).ToList());
    }
}
