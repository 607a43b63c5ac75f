namespace TrimOut.Papers.Tests;

/// <summary>Texts that a person may type, or type to do harm, and that must stand on paper as typed, without what can not be seen in them.</summary>
internal static class HostileText
{
    public static readonly string[] All =
    [
        "a | b || c", "|", "| - | - |", "|---|", "a \\| b", "\\", "\\\\", "ends with \\", "C:\\photos\\new", "`code`", "``", "```", "~~~", "a ` b",
        "*", "**bold**", "_under_", "__init__", "snake_case_name", "* item", "- item", "-", "---", "***", "___", "+ item", "+", "1. item",
        "12) item", "1.", "2026.", "===",
        "# heading", "#", "C #", "C ##", "a # b", "#5", "> quote", "a > b", "<", "<b>bold</b>", "<script>alert(1)</script>", "</td></table>", "<!-- hidden -->",
        "<http://example.invalid>", "<?php ?>",
        "[link](javascript:alert(1))", "![picture](http://example.invalid/x.png)", "[x]: http://example.invalid", "[ ]", "- [ ] task", "]]>",
        "http://example.invalid/", "www.example.invalid", "a@example.invalid",
        "&amp;", "&lt;script&gt;", "&#60;", "&nbsp;", "Smith & Sons;", "&", "~struck~", "~~struck~~", "==mark==", "^up^", "$x$", ":smile:", "{.class}",
        "{{name}}", "{% raw %}", "\"quoted\" 'single'",
        "=1+1", "@SUM(A1)", "👩‍🔧 🪟 ✂️", "\u05D7\u05DC\u05D5\u05DF | \u05DE\u05D8\u05D1\u05D7", "نافذة *المطبخ*",
        "\u202Eright to left\u202C",
        "e\u0301te\u0301",
        "日本語", "!", "a!", "!a", "'\"><svg onload=alert(1)>",
        "two  spaces", "a\u00A0b", "(", ")", "a\u200Db",
    ];
}
