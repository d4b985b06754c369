using System.Text;
using Ashery.Problems;

namespace Ashery.Web.Forms;

/// <summary>Reads an uploaded text file, or says why it is none.</summary>
internal static class Upload
{
    public static async Task<Result<string>> TextAsync(HttpContext context, string name)
    {
        var form = await context.Request.ReadFormAsync(context.RequestAborted);
        if (form.Files[name] is not { Length: > 0 } file)
        {
            return Result.Fail<string>(name, "No file was chosen.", "Choose a file from this device.");
        }

        using var memory = new MemoryStream();
        await file.CopyToAsync(memory, context.RequestAborted);
        try
        {
            var text = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true).GetString(memory.ToArray());
            return text.Contains('\0', StringComparison.Ordinal) ? Binary(name, file.FileName) : Result.Of(text.TrimStart('\uFEFF'));
        }
        catch (DecoderFallbackException)
        {
            return Binary(name, file.FileName);
        }
    }

    private static Result<string> Binary(string name, string fileName) => Result.Fail<string>(
        name, $"{FieldReader.Cut(fileName)} is not a text file in UTF-8.", "Choose a file that Ashery wrote, or save the table as CSV in UTF-8.");
}
