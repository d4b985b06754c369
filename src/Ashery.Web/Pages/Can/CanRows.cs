using Ashery.Web.Forms;

namespace Ashery.Web.Pages.Can;

/// <summary>The water and the rows of a form, without what only the can itself asks.</summary>
internal static class CanRows
{
    public static Draft Only(Draft typed) => Draft.With(("water", typed["water"])).Set("m", typed.All("m")).Set("g", typed.All("g"));
}
