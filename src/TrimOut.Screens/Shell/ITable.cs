namespace TrimOut.Screens.Shell;

/// <summary>A screen with a list that can be copied as a table.</summary>
internal interface ITable
{
    /// <summary>The headings and the rows that are listed now, also those beyond the edge of the screen. Worked out only when somebody copies it.</summary>
    IEnumerable<IReadOnlyList<string>> Table(ScreenContext context);
}
