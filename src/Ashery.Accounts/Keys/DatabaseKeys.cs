using System.Xml.Linq;
using Ashery.Accounts.Databases;
using Ashery.Accounts.Model;
using Microsoft.AspNetCore.DataProtection.Repositories;

namespace Ashery.Accounts.Keys;

/// <summary>Keeps the keys that sign cookies and forms in the database, so that every instance reads what another wrote.</summary>
public sealed class DatabaseKeys(AccountsDatabase database) : IXmlRepository
{
    public IReadOnlyCollection<XElement> GetAllElements()
    {
        using var db = database.Open();
        return [.. db.Keys.OrderBy(k => k.Id).Select(k => k.Xml).AsEnumerable().Select(XElement.Parse)];
    }

    public void StoreElement(XElement element, string friendlyName)
    {
        using var db = database.Open();
        db.Keys.Add(new ProtectionKeyRow { Name = friendlyName, Xml = element.ToString(SaveOptions.DisableFormatting) });
        db.SaveChanges();
    }
}
