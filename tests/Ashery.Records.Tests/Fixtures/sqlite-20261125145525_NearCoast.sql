PRAGMA foreign_keys = 0;
BEGIN;
CREATE TABLE "__EFMigrationsLock" (
    "Id" INTEGER NOT NULL CONSTRAINT "PK___EFMigrationsLock" PRIMARY KEY,
    "Timestamp" TEXT NOT NULL
);
CREATE TABLE "__EFMigrationsHistory" (
    "MigrationId" TEXT NOT NULL CONSTRAINT "PK___EFMigrationsHistory" PRIMARY KEY,
    "ProductVersion" TEXT NOT NULL
);
CREATE TABLE "garden_state" (
    "Number" INTEGER NOT NULL CONSTRAINT "PK_garden_state" PRIMARY KEY,
    "SavedAtTicks" INTEGER NOT NULL,
    "What" TEXT NOT NULL,
    "Name" TEXT NOT NULL,
    "IsDemo" INTEGER NOT NULL,
    "PlaceName" TEXT NOT NULL,
    "Latitude" REAL NOT NULL,
    "HasNormals" INTEGER NOT NULL,
    "Currency" TEXT NOT NULL,
    "UsUnits" INTEGER NOT NULL,
    "ScaleStep" REAL NOT NULL,
    "DefaultScoop" TEXT NULL
, "DefaultWater" TEXT NULL, "ElevationMetres" REAL NULL, "NearCoast" INTEGER NOT NULL DEFAULT 0);
CREATE TABLE "bag" (
    "State" INTEGER NOT NULL,
    "Position" INTEGER NOT NULL,
    "BagId" TEXT NOT NULL,
    "StockGrams" REAL NULL,
    "Price" REAL NULL,
    "SizeGrams" REAL NULL,
    "MaterialId" TEXT NOT NULL,
    "MaterialName" TEXT NOT NULL,
    "Kind" TEXT NOT NULL,
    "IsLiquid" INTEGER NOT NULL,
    "Formula" TEXT NULL,
    "MolarMass" REAL NULL,
    "HasPure" INTEGER NOT NULL,
    "PureIsLimit" INTEGER NOT NULL,
    "Cas" TEXT NULL,
    "TechnicalGrade" TEXT NULL,
    "NitrogenAmmonium" REAL NOT NULL,
    "NitrogenNitrate" REAL NOT NULL,
    "NitrogenUrea" REAL NOT NULL,
    "NitrogenOrganic" REAL NOT NULL,
    "NitrogenSlow" REAL NOT NULL,
    "BulkDensityMin" REAL NULL,
    "BulkDensityTypical" REAL NULL,
    "BulkDensityMax" REAL NULL,
    "LiquidDensity" REAL NULL,
    "OsmolesPerKg" REAL NULL,
    "CarbonToNitrogen" REAL NULL,
    "Moisture" REAL NOT NULL,
    "CompatibilityGroup" TEXT NOT NULL,
    "Dissolves" INTEGER NOT NULL,
    "SourceId" TEXT NOT NULL,
    "Provenance" TEXT NOT NULL,
    CONSTRAINT "PK_bag" PRIMARY KEY ("State", "Position"),
    CONSTRAINT "FK_bag_garden_state_State" FOREIGN KEY ("State") REFERENCES "garden_state" ("Number") ON DELETE CASCADE
);
CREATE TABLE "climate_normal" (
    "State" INTEGER NOT NULL,
    "Position" INTEGER NOT NULL,
    "MeanMax" REAL NOT NULL,
    "MeanMin" REAL NOT NULL,
    "RainMm" REAL NOT NULL, "Humidity" REAL NULL, "RadiationMj" REAL NULL, "WetDays" REAL NULL, "WindMs" REAL NULL,
    CONSTRAINT "PK_climate_normal" PRIMARY KEY ("State", "Position"),
    CONSTRAINT "FK_climate_normal_garden_state_State" FOREIGN KEY ("State") REFERENCES "garden_state" ("Number") ON DELETE CASCADE
);
CREATE TABLE "feed" (
    "State" INTEGER NOT NULL,
    "Position" INTEGER NOT NULL,
    "FeedId" TEXT NOT NULL,
    "Name" TEXT NOT NULL,
    "Kind" TEXT NOT NULL,
    "NitrogenAmmonium" REAL NOT NULL,
    "NitrogenNitrate" REAL NOT NULL,
    "NitrogenUrea" REAL NOT NULL,
    "NitrogenOrganic" REAL NOT NULL,
    "NitrogenSlow" REAL NOT NULL,
    "SaltIndex" REAL NULL,
    "LimeEquivalent" REAL NULL,
    "BulkDensity" REAL NULL,
    "Dissolves" INTEGER NOT NULL,
    CONSTRAINT "PK_feed" PRIMARY KEY ("State", "Position"),
    CONSTRAINT "FK_feed_garden_state_State" FOREIGN KEY ("State") REFERENCES "garden_state" ("Number") ON DELETE CASCADE
);
CREATE TABLE "pot" (
    "State" INTEGER NOT NULL,
    "Position" INTEGER NOT NULL,
    "PotId" TEXT NOT NULL,
    "Name" TEXT NOT NULL,
    "CropId" TEXT NOT NULL,
    "Litres" REAL NOT NULL,
    "Medium" TEXT NOT NULL,
    "Stage" TEXT NOT NULL,
    "Planted" TEXT NULL,
    "LastRepotted" TEXT NULL,
    "Count" INTEGER NOT NULL,
    "Place" TEXT NULL,
    "TopDiameter" REAL NULL,
    "Height" REAL NULL,
    "BottomDiameter" REAL NULL,
    "NeedsTraceElements" INTEGER NULL,
    "LowPhosphorus" INTEGER NULL,
    CONSTRAINT "PK_pot" PRIMARY KEY ("State", "Position"),
    CONSTRAINT "FK_pot_garden_state_State" FOREIGN KEY ("State") REFERENCES "garden_state" ("Number") ON DELETE CASCADE
);
CREATE TABLE "rule_change" (
    "State" INTEGER NOT NULL,
    "RuleId" TEXT NOT NULL,
    "Setting" TEXT NOT NULL,
    CONSTRAINT "PK_rule_change" PRIMARY KEY ("State", "RuleId"),
    CONSTRAINT "FK_rule_change_garden_state_State" FOREIGN KEY ("State") REFERENCES "garden_state" ("Number") ON DELETE CASCADE
);
CREATE TABLE "scoop" (
    "State" INTEGER NOT NULL,
    "Position" INTEGER NOT NULL,
    "Name" TEXT NOT NULL,
    "Litres" REAL NOT NULL,
    CONSTRAINT "PK_scoop" PRIMARY KEY ("State", "Position"),
    CONSTRAINT "FK_scoop_garden_state_State" FOREIGN KEY ("State") REFERENCES "garden_state" ("Number") ON DELETE CASCADE
);
CREATE TABLE "season" (
    "State" INTEGER NOT NULL,
    "Position" INTEGER NOT NULL,
    "Kind" TEXT NOT NULL,
    "FromMonth" INTEGER NOT NULL,
    "FromDay" INTEGER NOT NULL,
    "ToMonth" INTEGER NOT NULL,
    "ToDay" INTEGER NOT NULL,
    CONSTRAINT "PK_season" PRIMARY KEY ("State", "Position"),
    CONSTRAINT "FK_season_garden_state_State" FOREIGN KEY ("State") REFERENCES "garden_state" ("Number") ON DELETE CASCADE
);
CREATE TABLE "bag_content" (
    "State" INTEGER NOT NULL,
    "Bag" INTEGER NOT NULL,
    "OfPure" INTEGER NOT NULL,
    "Nutrient" TEXT NOT NULL,
    "Fraction" REAL NOT NULL,
    CONSTRAINT "PK_bag_content" PRIMARY KEY ("State", "Bag", "OfPure", "Nutrient"),
    CONSTRAINT "FK_bag_content_bag_State_Bag" FOREIGN KEY ("State", "Bag") REFERENCES "bag" ("State", "Position") ON DELETE CASCADE
);
CREATE TABLE "bag_figure" (
    "State" INTEGER NOT NULL,
    "Bag" INTEGER NOT NULL,
    "Which" TEXT NOT NULL,
    "Value" REAL NOT NULL,
    "SourceId" TEXT NOT NULL,
    "Provenance" TEXT NOT NULL,
    "Note" TEXT NULL,
    CONSTRAINT "PK_bag_figure" PRIMARY KEY ("State", "Bag", "Which"),
    CONSTRAINT "FK_bag_figure_bag_State_Bag" FOREIGN KEY ("State", "Bag") REFERENCES "bag" ("State", "Position") ON DELETE CASCADE
);
CREATE TABLE "bag_solubility" (
    "State" INTEGER NOT NULL,
    "Bag" INTEGER NOT NULL,
    "Position" INTEGER NOT NULL,
    "Celsius" REAL NOT NULL,
    "GramsPerKgWater" REAL NOT NULL,
    CONSTRAINT "PK_bag_solubility" PRIMARY KEY ("State", "Bag", "Position"),
    CONSTRAINT "FK_bag_solubility_bag_State_Bag" FOREIGN KEY ("State", "Bag") REFERENCES "bag" ("State", "Position") ON DELETE CASCADE
);
CREATE TABLE "bag_spread" (
    "State" INTEGER NOT NULL,
    "Bag" INTEGER NOT NULL,
    "Nutrient" TEXT NOT NULL,
    "Min" REAL NOT NULL,
    "Typical" REAL NOT NULL,
    "Max" REAL NOT NULL,
    CONSTRAINT "PK_bag_spread" PRIMARY KEY ("State", "Bag", "Nutrient"),
    CONSTRAINT "FK_bag_spread_bag_State_Bag" FOREIGN KEY ("State", "Bag") REFERENCES "bag" ("State", "Position") ON DELETE CASCADE
);
CREATE TABLE "bag_word" (
    "State" INTEGER NOT NULL,
    "Bag" INTEGER NOT NULL,
    "List" TEXT NOT NULL,
    "Position" INTEGER NOT NULL,
    "Text" TEXT NOT NULL,
    CONSTRAINT "PK_bag_word" PRIMARY KEY ("State", "Bag", "List", "Position"),
    CONSTRAINT "FK_bag_word_bag_State_Bag" FOREIGN KEY ("State", "Bag") REFERENCES "bag" ("State", "Position") ON DELETE CASCADE
);
CREATE TABLE "feed_content" (
    "State" INTEGER NOT NULL,
    "Feed" INTEGER NOT NULL,
    "Nutrient" TEXT NOT NULL,
    "Fraction" REAL NOT NULL,
    CONSTRAINT "PK_feed_content" PRIMARY KEY ("State", "Feed", "Nutrient"),
    CONSTRAINT "FK_feed_content_feed_State_Feed" FOREIGN KEY ("State", "Feed") REFERENCES "feed" ("State", "Position") ON DELETE CASCADE
);
CREATE TABLE "feed_part" (
    "State" INTEGER NOT NULL,
    "Feed" INTEGER NOT NULL,
    "MaterialId" TEXT NOT NULL,
    "Share" REAL NOT NULL,
    CONSTRAINT "PK_feed_part" PRIMARY KEY ("State", "Feed", "MaterialId"),
    CONSTRAINT "FK_feed_part_feed_State_Feed" FOREIGN KEY ("State", "Feed") REFERENCES "feed" ("State", "Position") ON DELETE CASCADE
);
CREATE TABLE "scoop_calibration" (
    "State" INTEGER NOT NULL,
    "Scoop" INTEGER NOT NULL,
    "MaterialId" TEXT NOT NULL,
    "Min" REAL NOT NULL,
    "Typical" REAL NOT NULL,
    "Max" REAL NOT NULL,
    CONSTRAINT "PK_scoop_calibration" PRIMARY KEY ("State", "Scoop", "MaterialId"),
    CONSTRAINT "FK_scoop_calibration_scoop_State_Scoop" FOREIGN KEY ("State", "Scoop") REFERENCES "scoop" ("State", "Position") ON DELETE CASCADE
);
CREATE TABLE "water" (
    "State" INTEGER NOT NULL,
    "Position" INTEGER NOT NULL,
    "WaterId" TEXT NOT NULL,
    "Name" TEXT NOT NULL,
    "Note" TEXT NULL,
    "PH" REAL NULL,
    "Celsius" REAL NULL,
    "Ec" REAL NULL,
    "EcUnit" TEXT NULL,
    "EcCelsius" REAL NULL,
    CONSTRAINT "PK_water" PRIMARY KEY ("State", "Position"),
    CONSTRAINT "FK_water_garden_state_State" FOREIGN KEY ("State") REFERENCES "garden_state" ("Number") ON DELETE CASCADE
);
CREATE TABLE "water_line" (
    "State" INTEGER NOT NULL,
    "Water" INTEGER NOT NULL,
    "Position" INTEGER NOT NULL,
    "Name" TEXT NOT NULL,
    "Value" REAL NOT NULL,
    "Unit" TEXT NULL,
    "Below" INTEGER NOT NULL,
    CONSTRAINT "PK_water_line" PRIMARY KEY ("State", "Water", "Position"),
    CONSTRAINT "FK_water_line_water_State_Water" FOREIGN KEY ("State", "Water") REFERENCES "water" ("State", "Position") ON DELETE CASCADE
);
INSERT INTO "__EFMigrationsHistory" ("MigrationId", "ProductVersion") VALUES ('20261125095124_FirstGarden', '10.0.15');
INSERT INTO "__EFMigrationsHistory" ("MigrationId", "ProductVersion") VALUES ('20261125141924_WatersAndWeather', '10.0.15');
INSERT INTO "__EFMigrationsHistory" ("MigrationId", "ProductVersion") VALUES ('20261125145525_NearCoast', '10.0.15');
INSERT INTO "garden_state" ("Number", "SavedAtTicks", "What", "Name", "IsDemo", "PlaceName", "Latitude", "HasNormals", "Currency", "UsUnits", "ScaleStep", "DefaultScoop", "DefaultWater", "ElevationMetres", "NearCoast") VALUES (1, 639312281429959783, 'first', 'before', 1, 'Tidewick harbour (invented)', 42.6, 1, 'EUR', 0, 0.1, NULL, 'harbour-tap', NULL, 0);
INSERT INTO "garden_state" ("Number", "SavedAtTicks", "What", "Name", "IsDemo", "PlaceName", "Latitude", "HasNormals", "Currency", "UsUnits", "ScaleStep", "DefaultScoop", "DefaultWater", "ElevationMetres", "NearCoast") VALUES (2, 639312281435846524, 'second', 'Harbour roof terrace (demo)', 1, 'Tidewick harbour (invented)', 42.6, 1, 'EUR', 0, 0.1, NULL, 'harbour-tap', NULL, 0);
INSERT INTO "bag" ("State", "Position", "BagId", "StockGrams", "Price", "SizeGrams", "MaterialId", "MaterialName", "Kind", "IsLiquid", "Formula", "MolarMass", "HasPure", "PureIsLimit", "Cas", "TechnicalGrade", "NitrogenAmmonium", "NitrogenNitrate", "NitrogenUrea", "NitrogenOrganic", "NitrogenSlow", "BulkDensityMin", "BulkDensityTypical", "BulkDensityMax", "LiquidDensity", "OsmolesPerKg", "CarbonToNitrogen", "Moisture", "CompatibilityGroup", "Dissolves", "SourceId", "Provenance") VALUES (1, 0, 'ammonium-sulfate', 120.0, 9.4, 5000.0, 'ammonium-sulfate', 'Ammonium sulfate', 'Straight', 0, '(NH4)2SO4', 132.134, 1, 1, '7783-20-2', NULL, 0.21, 0.0, 0.0, 0.0, 0.0, 1.009, 1.033, 1.057, NULL, 22.458120924243676, NULL, 0.0, 'AS', 1, 'rb209', 'Seen');
INSERT INTO "bag" ("State", "Position", "BagId", "StockGrams", "Price", "SizeGrams", "MaterialId", "MaterialName", "Kind", "IsLiquid", "Formula", "MolarMass", "HasPure", "PureIsLimit", "Cas", "TechnicalGrade", "NitrogenAmmonium", "NitrogenNitrate", "NitrogenUrea", "NitrogenOrganic", "NitrogenSlow", "BulkDensityMin", "BulkDensityTypical", "BulkDensityMax", "LiquidDensity", "OsmolesPerKg", "CarbonToNitrogen", "Moisture", "CompatibilityGroup", "Dissolves", "SourceId", "Provenance") VALUES (1, 1, 'potassium-nitrate', 1900.0, 14.2, 2000.0, 'potassium-nitrate', 'Potassium nitrate', 'Straight', 0, 'KNO3', 101.102, 1, 1, '7757-79-1', NULL, 0.0, 0.135, 0.0, 0.0, 0.0, 0.95, 1.1, 1.25, NULL, 19.276528909537298, NULL, 0.0, 'NKN', 1, 'recall', 'FromMemory');
INSERT INTO "bag" ("State", "Position", "BagId", "StockGrams", "Price", "SizeGrams", "MaterialId", "MaterialName", "Kind", "IsLiquid", "Formula", "MolarMass", "HasPure", "PureIsLimit", "Cas", "TechnicalGrade", "NitrogenAmmonium", "NitrogenNitrate", "NitrogenUrea", "NitrogenOrganic", "NitrogenSlow", "BulkDensityMin", "BulkDensityTypical", "BulkDensityMax", "LiquidDensity", "OsmolesPerKg", "CarbonToNitrogen", "Moisture", "CompatibilityGroup", "Dissolves", "SourceId", "Provenance") VALUES (1, 2, 'map-technical', 700.0, 8.9, 1000.0, 'map-technical', 'Mono-ammonium phosphate crystalline', 'Straight', 0, 'NH4H2PO4', 115.025, 1, 1, '7722-76-1', NULL, 0.12, 0.0, 0.0, 0.0, 0.0, 0.9, 1.0, 1.1, NULL, 17.134786352506783, NULL, 0.0, 'MAP', 1, 'recall', 'FromMemory');
INSERT INTO "bag" ("State", "Position", "BagId", "StockGrams", "Price", "SizeGrams", "MaterialId", "MaterialName", "Kind", "IsLiquid", "Formula", "MolarMass", "HasPure", "PureIsLimit", "Cas", "TechnicalGrade", "NitrogenAmmonium", "NitrogenNitrate", "NitrogenUrea", "NitrogenOrganic", "NitrogenSlow", "BulkDensityMin", "BulkDensityTypical", "BulkDensityMax", "LiquidDensity", "OsmolesPerKg", "CarbonToNitrogen", "Moisture", "CompatibilityGroup", "Dissolves", "SourceId", "Provenance") VALUES (2, 0, 'ammonium-sulfate', 120.0, 9.4, 5000.0, 'ammonium-sulfate', 'Ammonium sulfate', 'Straight', 0, '(NH4)2SO4', 132.134, 1, 1, '7783-20-2', NULL, 0.21, 0.0, 0.0, 0.0, 0.0, 1.009, 1.033, 1.057, NULL, 22.458120924243676, NULL, 0.0, 'AS', 1, 'rb209', 'Seen');
INSERT INTO "bag" ("State", "Position", "BagId", "StockGrams", "Price", "SizeGrams", "MaterialId", "MaterialName", "Kind", "IsLiquid", "Formula", "MolarMass", "HasPure", "PureIsLimit", "Cas", "TechnicalGrade", "NitrogenAmmonium", "NitrogenNitrate", "NitrogenUrea", "NitrogenOrganic", "NitrogenSlow", "BulkDensityMin", "BulkDensityTypical", "BulkDensityMax", "LiquidDensity", "OsmolesPerKg", "CarbonToNitrogen", "Moisture", "CompatibilityGroup", "Dissolves", "SourceId", "Provenance") VALUES (2, 1, 'potassium-nitrate', 1900.0, 14.2, 2000.0, 'potassium-nitrate', 'Potassium nitrate', 'Straight', 0, 'KNO3', 101.102, 1, 1, '7757-79-1', NULL, 0.0, 0.135, 0.0, 0.0, 0.0, 0.95, 1.1, 1.25, NULL, 19.276528909537298, NULL, 0.0, 'NKN', 1, 'recall', 'FromMemory');
INSERT INTO "bag" ("State", "Position", "BagId", "StockGrams", "Price", "SizeGrams", "MaterialId", "MaterialName", "Kind", "IsLiquid", "Formula", "MolarMass", "HasPure", "PureIsLimit", "Cas", "TechnicalGrade", "NitrogenAmmonium", "NitrogenNitrate", "NitrogenUrea", "NitrogenOrganic", "NitrogenSlow", "BulkDensityMin", "BulkDensityTypical", "BulkDensityMax", "LiquidDensity", "OsmolesPerKg", "CarbonToNitrogen", "Moisture", "CompatibilityGroup", "Dissolves", "SourceId", "Provenance") VALUES (2, 2, 'map-technical', 700.0, 8.9, 1000.0, 'map-technical', 'Mono-ammonium phosphate crystalline', 'Straight', 0, 'NH4H2PO4', 115.025, 1, 1, '7722-76-1', NULL, 0.12, 0.0, 0.0, 0.0, 0.0, 0.9, 1.0, 1.1, NULL, 17.134786352506783, NULL, 0.0, 'MAP', 1, 'recall', 'FromMemory');
INSERT INTO "climate_normal" ("State", "Position", "MeanMax", "MeanMin", "RainMm", "Humidity", "RadiationMj", "WetDays", "WindMs") VALUES (1, 0, 12.0, 5.0, 110.0, NULL, NULL, NULL, NULL);
INSERT INTO "climate_normal" ("State", "Position", "MeanMax", "MeanMin", "RainMm", "Humidity", "RadiationMj", "WetDays", "WindMs") VALUES (1, 1, 13.0, 5.0, 95.0, NULL, NULL, NULL, NULL);
INSERT INTO "climate_normal" ("State", "Position", "MeanMax", "MeanMin", "RainMm", "Humidity", "RadiationMj", "WetDays", "WindMs") VALUES (1, 2, 16.0, 8.5, 80.0, NULL, NULL, NULL, NULL);
INSERT INTO "climate_normal" ("State", "Position", "MeanMax", "MeanMin", "RainMm", "Humidity", "RadiationMj", "WetDays", "WindMs") VALUES (1, 3, 20.0, 11.0, 70.0, NULL, NULL, NULL, NULL);
INSERT INTO "climate_normal" ("State", "Position", "MeanMax", "MeanMin", "RainMm", "Humidity", "RadiationMj", "WetDays", "WindMs") VALUES (1, 4, 24.0, 15.0, 50.0, NULL, NULL, NULL, NULL);
INSERT INTO "climate_normal" ("State", "Position", "MeanMax", "MeanMin", "RainMm", "Humidity", "RadiationMj", "WetDays", "WindMs") VALUES (1, 5, 29.0, 19.0, 30.0, NULL, NULL, NULL, NULL);
INSERT INTO "climate_normal" ("State", "Position", "MeanMax", "MeanMin", "RainMm", "Humidity", "RadiationMj", "WetDays", "WindMs") VALUES (1, 6, 33.5, 22.5, 12.0, NULL, NULL, NULL, NULL);
INSERT INTO "climate_normal" ("State", "Position", "MeanMax", "MeanMin", "RainMm", "Humidity", "RadiationMj", "WetDays", "WindMs") VALUES (1, 7, 34.0, 22.5, 20.0, NULL, NULL, NULL, NULL);
INSERT INTO "climate_normal" ("State", "Position", "MeanMax", "MeanMin", "RainMm", "Humidity", "RadiationMj", "WetDays", "WindMs") VALUES (1, 8, 28.0, 18.0, 80.0, NULL, NULL, NULL, NULL);
INSERT INTO "climate_normal" ("State", "Position", "MeanMax", "MeanMin", "RainMm", "Humidity", "RadiationMj", "WetDays", "WindMs") VALUES (1, 9, 22.0, 14.0, 160.0, NULL, NULL, NULL, NULL);
INSERT INTO "climate_normal" ("State", "Position", "MeanMax", "MeanMin", "RainMm", "Humidity", "RadiationMj", "WetDays", "WindMs") VALUES (1, 10, 17.0, 10.0, 165.0, NULL, NULL, NULL, NULL);
INSERT INTO "climate_normal" ("State", "Position", "MeanMax", "MeanMin", "RainMm", "Humidity", "RadiationMj", "WetDays", "WindMs") VALUES (1, 11, 13.0, 6.0, 125.0, NULL, NULL, NULL, NULL);
INSERT INTO "climate_normal" ("State", "Position", "MeanMax", "MeanMin", "RainMm", "Humidity", "RadiationMj", "WetDays", "WindMs") VALUES (2, 0, 12.0, 5.0, 110.0, NULL, NULL, NULL, NULL);
INSERT INTO "climate_normal" ("State", "Position", "MeanMax", "MeanMin", "RainMm", "Humidity", "RadiationMj", "WetDays", "WindMs") VALUES (2, 1, 13.0, 5.0, 95.0, NULL, NULL, NULL, NULL);
INSERT INTO "climate_normal" ("State", "Position", "MeanMax", "MeanMin", "RainMm", "Humidity", "RadiationMj", "WetDays", "WindMs") VALUES (2, 2, 16.0, 8.5, 80.0, NULL, NULL, NULL, NULL);
INSERT INTO "climate_normal" ("State", "Position", "MeanMax", "MeanMin", "RainMm", "Humidity", "RadiationMj", "WetDays", "WindMs") VALUES (2, 3, 20.0, 11.0, 70.0, NULL, NULL, NULL, NULL);
INSERT INTO "climate_normal" ("State", "Position", "MeanMax", "MeanMin", "RainMm", "Humidity", "RadiationMj", "WetDays", "WindMs") VALUES (2, 4, 24.0, 15.0, 50.0, NULL, NULL, NULL, NULL);
INSERT INTO "climate_normal" ("State", "Position", "MeanMax", "MeanMin", "RainMm", "Humidity", "RadiationMj", "WetDays", "WindMs") VALUES (2, 5, 29.0, 19.0, 30.0, NULL, NULL, NULL, NULL);
INSERT INTO "climate_normal" ("State", "Position", "MeanMax", "MeanMin", "RainMm", "Humidity", "RadiationMj", "WetDays", "WindMs") VALUES (2, 6, 33.5, 22.5, 12.0, NULL, NULL, NULL, NULL);
INSERT INTO "climate_normal" ("State", "Position", "MeanMax", "MeanMin", "RainMm", "Humidity", "RadiationMj", "WetDays", "WindMs") VALUES (2, 7, 34.0, 22.5, 20.0, NULL, NULL, NULL, NULL);
INSERT INTO "climate_normal" ("State", "Position", "MeanMax", "MeanMin", "RainMm", "Humidity", "RadiationMj", "WetDays", "WindMs") VALUES (2, 8, 28.0, 18.0, 80.0, NULL, NULL, NULL, NULL);
INSERT INTO "climate_normal" ("State", "Position", "MeanMax", "MeanMin", "RainMm", "Humidity", "RadiationMj", "WetDays", "WindMs") VALUES (2, 9, 22.0, 14.0, 160.0, NULL, NULL, NULL, NULL);
INSERT INTO "climate_normal" ("State", "Position", "MeanMax", "MeanMin", "RainMm", "Humidity", "RadiationMj", "WetDays", "WindMs") VALUES (2, 10, 17.0, 10.0, 165.0, NULL, NULL, NULL, NULL);
INSERT INTO "climate_normal" ("State", "Position", "MeanMax", "MeanMin", "RainMm", "Humidity", "RadiationMj", "WetDays", "WindMs") VALUES (2, 11, 13.0, 6.0, 125.0, NULL, NULL, NULL, NULL);
INSERT INTO "feed" ("State", "Position", "FeedId", "Name", "Kind", "NitrogenAmmonium", "NitrogenNitrate", "NitrogenUrea", "NitrogenOrganic", "NitrogenSlow", "SaltIndex", "LimeEquivalent", "BulkDensity", "Dissolves") VALUES (1, 0, 'terrace-blend', 'Terrace blend', 'Mineral', 0.1263, 0.048600000000000004, 0.0, 0.0, 0.0, 65.661, 0.56990000000000007, 1.0529612740432952, 1);
INSERT INTO "feed" ("State", "Position", "FeedId", "Name", "Kind", "NitrogenAmmonium", "NitrogenNitrate", "NitrogenUrea", "NitrogenOrganic", "NitrogenSlow", "SaltIndex", "LimeEquivalent", "BulkDensity", "Dissolves") VALUES (1, 1, 'tide-mix', 'Tide mix (made on the day)', 'Organic', 0.0, 0.0, 0.0, 0.0226, 0.0, NULL, NULL, 0.69902912621359226, 0);
INSERT INTO "feed" ("State", "Position", "FeedId", "Name", "Kind", "NitrogenAmmonium", "NitrogenNitrate", "NitrogenUrea", "NitrogenOrganic", "NitrogenSlow", "SaltIndex", "LimeEquivalent", "BulkDensity", "Dissolves") VALUES (2, 0, 'terrace-blend', 'Terrace blend', 'Mineral', 0.1263, 0.048600000000000004, 0.0, 0.0, 0.0, 65.661, 0.56990000000000007, 1.0529612740432952, 1);
INSERT INTO "feed" ("State", "Position", "FeedId", "Name", "Kind", "NitrogenAmmonium", "NitrogenNitrate", "NitrogenUrea", "NitrogenOrganic", "NitrogenSlow", "SaltIndex", "LimeEquivalent", "BulkDensity", "Dissolves") VALUES (2, 1, 'tide-mix', 'Tide mix (made on the day)', 'Organic', 0.0, 0.0, 0.0, 0.0226, 0.0, NULL, NULL, 0.69902912621359226, 0);
INSERT INTO "pot" ("State", "Position", "PotId", "Name", "CropId", "Litres", "Medium", "Stage", "Planted", "LastRepotted", "Count", "Place", "TopDiameter", "Height", "BottomDiameter", "NeedsTraceElements", "LowPhosphorus") VALUES (1, 0, 'p01', 'Coral hibiscus', 'tropical-hibiscus', 12.0, 'PeatMix', 'Mature', '2023-05-10', '2026-04-02', 1, 'south rail', NULL, NULL, NULL, NULL, NULL);
INSERT INTO "pot" ("State", "Position", "PotId", "Name", "CropId", "Litres", "Medium", "Stage", "Planted", "LastRepotted", "Count", "Place", "TopDiameter", "Height", "BottomDiameter", "NeedsTraceElements", "LowPhosphorus") VALUES (1, 1, 'p02', 'Yellow hibiscus', 'tropical-hibiscus', 7.5, 'PeatMix', 'Mature', '2024-05-19', '2026-04-02', 1, 'south rail', NULL, NULL, NULL, NULL, NULL);
INSERT INTO "pot" ("State", "Position", "PotId", "Name", "CropId", "Litres", "Medium", "Stage", "Planted", "LastRepotted", "Count", "Place", "TopDiameter", "Height", "BottomDiameter", "NeedsTraceElements", "LowPhosphorus") VALUES (1, 2, 'p03', 'Hibiscus cutting', 'tropical-hibiscus', 1.6, 'CoirMix', 'Mature', '2026-11-01', '2027-01-20', 1, 'stair bench', NULL, NULL, NULL, NULL, NULL);
INSERT INTO "pot" ("State", "Position", "PotId", "Name", "CropId", "Litres", "Medium", "Stage", "Planted", "LastRepotted", "Count", "Place", "TopDiameter", "Height", "BottomDiameter", "NeedsTraceElements", "LowPhosphorus") VALUES (1, 3, 'p04', 'Purple bougainvillea', 'bougainvillea', 18.0, 'LoamMix', 'Mature', '2021-04-15', '2025-03-10', 1, 'south rail', NULL, NULL, NULL, NULL, 1);
INSERT INTO "pot" ("State", "Position", "PotId", "Name", "CropId", "Litres", "Medium", "Stage", "Planted", "LastRepotted", "Count", "Place", "TopDiameter", "Height", "BottomDiameter", "NeedsTraceElements", "LowPhosphorus") VALUES (2, 0, 'p01', 'Coral hibiscus', 'tropical-hibiscus', 12.0, 'PeatMix', 'Mature', '2023-05-10', '2026-04-02', 1, 'south rail', NULL, NULL, NULL, NULL, NULL);
INSERT INTO "pot" ("State", "Position", "PotId", "Name", "CropId", "Litres", "Medium", "Stage", "Planted", "LastRepotted", "Count", "Place", "TopDiameter", "Height", "BottomDiameter", "NeedsTraceElements", "LowPhosphorus") VALUES (2, 1, 'p02', 'Yellow hibiscus', 'tropical-hibiscus', 7.5, 'PeatMix', 'Mature', '2024-05-19', '2026-04-02', 1, 'south rail', NULL, NULL, NULL, NULL, NULL);
INSERT INTO "pot" ("State", "Position", "PotId", "Name", "CropId", "Litres", "Medium", "Stage", "Planted", "LastRepotted", "Count", "Place", "TopDiameter", "Height", "BottomDiameter", "NeedsTraceElements", "LowPhosphorus") VALUES (2, 2, 'p03', 'Hibiscus cutting', 'tropical-hibiscus', 1.6, 'CoirMix', 'Mature', '2026-11-01', '2027-01-20', 1, 'stair bench', NULL, NULL, NULL, NULL, NULL);
INSERT INTO "pot" ("State", "Position", "PotId", "Name", "CropId", "Litres", "Medium", "Stage", "Planted", "LastRepotted", "Count", "Place", "TopDiameter", "Height", "BottomDiameter", "NeedsTraceElements", "LowPhosphorus") VALUES (2, 3, 'p04', 'Purple bougainvillea', 'bougainvillea', 18.0, 'LoamMix', 'Mature', '2021-04-15', '2025-03-10', 1, 'south rail', NULL, NULL, NULL, NULL, 1);
INSERT INTO "scoop" ("State", "Position", "Name", "Litres") VALUES (1, 0, 'teaspoon', 0.005);
INSERT INTO "scoop" ("State", "Position", "Name", "Litres") VALUES (1, 1, 'half scoop', 0.015);
INSERT INTO "scoop" ("State", "Position", "Name", "Litres") VALUES (2, 0, 'teaspoon', 0.005);
INSERT INTO "scoop" ("State", "Position", "Name", "Litres") VALUES (2, 1, 'half scoop', 0.015);
INSERT INTO "bag_content" ("State", "Bag", "OfPure", "Nutrient", "Fraction") VALUES (1, 0, 0, 'N', 0.21);
INSERT INTO "bag_content" ("State", "Bag", "OfPure", "Nutrient", "Fraction") VALUES (1, 0, 0, 'S', 0.24);
INSERT INTO "bag_content" ("State", "Bag", "OfPure", "Nutrient", "Fraction") VALUES (1, 0, 1, 'N', 0.21201);
INSERT INTO "bag_content" ("State", "Bag", "OfPure", "Nutrient", "Fraction") VALUES (1, 0, 1, 'S', 0.24263);
INSERT INTO "bag_content" ("State", "Bag", "OfPure", "Nutrient", "Fraction") VALUES (1, 1, 0, 'Cl', 0.002);
INSERT INTO "bag_content" ("State", "Bag", "OfPure", "Nutrient", "Fraction") VALUES (1, 1, 0, 'K', 0.455);
INSERT INTO "bag_content" ("State", "Bag", "OfPure", "Nutrient", "Fraction") VALUES (1, 1, 0, 'N', 0.135);
INSERT INTO "bag_content" ("State", "Bag", "OfPure", "Nutrient", "Fraction") VALUES (1, 1, 1, 'K', 0.46584000000000003);
INSERT INTO "bag_content" ("State", "Bag", "OfPure", "Nutrient", "Fraction") VALUES (1, 1, 1, 'N', 0.13854);
INSERT INTO "bag_content" ("State", "Bag", "OfPure", "Nutrient", "Fraction") VALUES (1, 2, 0, 'N', 0.12);
INSERT INTO "bag_content" ("State", "Bag", "OfPure", "Nutrient", "Fraction") VALUES (1, 2, 0, 'P', 0.61);
INSERT INTO "bag_content" ("State", "Bag", "OfPure", "Nutrient", "Fraction") VALUES (1, 2, 1, 'N', 0.12176999999999999);
INSERT INTO "bag_content" ("State", "Bag", "OfPure", "Nutrient", "Fraction") VALUES (1, 2, 1, 'P', 0.61701000000000006);
INSERT INTO "bag_content" ("State", "Bag", "OfPure", "Nutrient", "Fraction") VALUES (2, 0, 0, 'N', 0.21);
INSERT INTO "bag_content" ("State", "Bag", "OfPure", "Nutrient", "Fraction") VALUES (2, 0, 0, 'S', 0.24);
INSERT INTO "bag_content" ("State", "Bag", "OfPure", "Nutrient", "Fraction") VALUES (2, 0, 1, 'N', 0.21201);
INSERT INTO "bag_content" ("State", "Bag", "OfPure", "Nutrient", "Fraction") VALUES (2, 0, 1, 'S', 0.24263);
INSERT INTO "bag_content" ("State", "Bag", "OfPure", "Nutrient", "Fraction") VALUES (2, 1, 0, 'Cl', 0.002);
INSERT INTO "bag_content" ("State", "Bag", "OfPure", "Nutrient", "Fraction") VALUES (2, 1, 0, 'K', 0.455);
INSERT INTO "bag_content" ("State", "Bag", "OfPure", "Nutrient", "Fraction") VALUES (2, 1, 0, 'N', 0.135);
INSERT INTO "bag_content" ("State", "Bag", "OfPure", "Nutrient", "Fraction") VALUES (2, 1, 1, 'K', 0.46584000000000003);
INSERT INTO "bag_content" ("State", "Bag", "OfPure", "Nutrient", "Fraction") VALUES (2, 1, 1, 'N', 0.13854);
INSERT INTO "bag_content" ("State", "Bag", "OfPure", "Nutrient", "Fraction") VALUES (2, 2, 0, 'N', 0.12);
INSERT INTO "bag_content" ("State", "Bag", "OfPure", "Nutrient", "Fraction") VALUES (2, 2, 0, 'P', 0.61);
INSERT INTO "bag_content" ("State", "Bag", "OfPure", "Nutrient", "Fraction") VALUES (2, 2, 1, 'N', 0.12176999999999999);
INSERT INTO "bag_content" ("State", "Bag", "OfPure", "Nutrient", "Fraction") VALUES (2, 2, 1, 'P', 0.61701000000000006);
INSERT INTO "bag_figure" ("State", "Bag", "Which", "Value", "SourceId", "Provenance", "Note") VALUES (1, 0, 'criticalRelativeHumidity', 79.2, 'wiki-crh', 'Seen', '80.6 in greenspan1977; 80.5 in crc-rh; 79 in phys-char');
INSERT INTO "bag_figure" ("State", "Bag", "Which", "Value", "SourceId", "Provenance", "Note") VALUES (1, 0, 'limeEquivalent', 1.1, 'acidity-list', 'Seen', NULL);
INSERT INTO "bag_figure" ("State", "Bag", "Which", "Value", "SourceId", "Provenance", "Note") VALUES (1, 0, 'saltIndex', 69.0, 'si-garden-list', 'Seen', '88.3 in mortvedt2001-list');
INSERT INTO "bag_figure" ("State", "Bag", "Which", "Value", "SourceId", "Provenance", "Note") VALUES (1, 1, 'criticalRelativeHumidity', 90.5, 'wiki-crh', 'Seen', '92.3 in greenspan1977; 90.8 in crc-rh');
INSERT INTO "bag_figure" ("State", "Bag", "Which", "Value", "SourceId", "Provenance", "Note") VALUES (1, 1, 'limeEquivalent', -0.26, 'acidity-list', 'Seen', '-0.23 in pierre1933');
INSERT INTO "bag_figure" ("State", "Bag", "Which", "Value", "SourceId", "Provenance", "Note") VALUES (1, 1, 'saltIndex', 69.5, 'mortvedt2001-list', 'Seen', '73.6 in rader1943');
INSERT INTO "bag_figure" ("State", "Bag", "Which", "Value", "SourceId", "Provenance", "Note") VALUES (1, 2, 'criticalRelativeHumidity', 91.6, 'wiki-crh', 'Seen', NULL);
INSERT INTO "bag_figure" ("State", "Bag", "Which", "Value", "SourceId", "Provenance", "Note") VALUES (1, 2, 'limeEquivalent', 0.65, 'acidity-list', 'Seen', NULL);
INSERT INTO "bag_figure" ("State", "Bag", "Which", "Value", "SourceId", "Provenance", "Note") VALUES (1, 2, 'saltIndex', 29.9, 'rader1943', 'FromMemory', '12.2-61.7; 26.7 in mortvedt2001-list');
INSERT INTO "bag_figure" ("State", "Bag", "Which", "Value", "SourceId", "Provenance", "Note") VALUES (2, 0, 'criticalRelativeHumidity', 79.2, 'wiki-crh', 'Seen', '80.6 in greenspan1977; 80.5 in crc-rh; 79 in phys-char');
INSERT INTO "bag_figure" ("State", "Bag", "Which", "Value", "SourceId", "Provenance", "Note") VALUES (2, 0, 'limeEquivalent', 1.1, 'acidity-list', 'Seen', NULL);
INSERT INTO "bag_figure" ("State", "Bag", "Which", "Value", "SourceId", "Provenance", "Note") VALUES (2, 0, 'saltIndex', 69.0, 'si-garden-list', 'Seen', '88.3 in mortvedt2001-list');
INSERT INTO "bag_figure" ("State", "Bag", "Which", "Value", "SourceId", "Provenance", "Note") VALUES (2, 1, 'criticalRelativeHumidity', 90.5, 'wiki-crh', 'Seen', '92.3 in greenspan1977; 90.8 in crc-rh');
INSERT INTO "bag_figure" ("State", "Bag", "Which", "Value", "SourceId", "Provenance", "Note") VALUES (2, 1, 'limeEquivalent', -0.26, 'acidity-list', 'Seen', '-0.23 in pierre1933');
INSERT INTO "bag_figure" ("State", "Bag", "Which", "Value", "SourceId", "Provenance", "Note") VALUES (2, 1, 'saltIndex', 69.5, 'mortvedt2001-list', 'Seen', '73.6 in rader1943');
INSERT INTO "bag_figure" ("State", "Bag", "Which", "Value", "SourceId", "Provenance", "Note") VALUES (2, 2, 'criticalRelativeHumidity', 91.6, 'wiki-crh', 'Seen', NULL);
INSERT INTO "bag_figure" ("State", "Bag", "Which", "Value", "SourceId", "Provenance", "Note") VALUES (2, 2, 'limeEquivalent', 0.65, 'acidity-list', 'Seen', NULL);
INSERT INTO "bag_figure" ("State", "Bag", "Which", "Value", "SourceId", "Provenance", "Note") VALUES (2, 2, 'saltIndex', 29.9, 'rader1943', 'FromMemory', '12.2-61.7; 26.7 in mortvedt2001-list');
INSERT INTO "bag_solubility" ("State", "Bag", "Position", "Celsius", "GramsPerKgWater") VALUES (1, 0, 0, 0.0, 706.0);
INSERT INTO "bag_solubility" ("State", "Bag", "Position", "Celsius", "GramsPerKgWater") VALUES (1, 0, 1, 10.0, 730.0);
INSERT INTO "bag_solubility" ("State", "Bag", "Position", "Celsius", "GramsPerKgWater") VALUES (1, 0, 2, 20.0, 754.0);
INSERT INTO "bag_solubility" ("State", "Bag", "Position", "Celsius", "GramsPerKgWater") VALUES (1, 0, 3, 25.0, 764.0);
INSERT INTO "bag_solubility" ("State", "Bag", "Position", "Celsius", "GramsPerKgWater") VALUES (1, 1, 0, 0.0, 133.0);
INSERT INTO "bag_solubility" ("State", "Bag", "Position", "Celsius", "GramsPerKgWater") VALUES (1, 1, 1, 20.0, 316.0);
INSERT INTO "bag_solubility" ("State", "Bag", "Position", "Celsius", "GramsPerKgWater") VALUES (1, 1, 2, 25.0, 383.0);
INSERT INTO "bag_solubility" ("State", "Bag", "Position", "Celsius", "GramsPerKgWater") VALUES (1, 2, 0, 0.0, 227.0);
INSERT INTO "bag_solubility" ("State", "Bag", "Position", "Celsius", "GramsPerKgWater") VALUES (1, 2, 1, 20.0, 368.0);
INSERT INTO "bag_solubility" ("State", "Bag", "Position", "Celsius", "GramsPerKgWater") VALUES (1, 2, 2, 25.0, 404.0);
INSERT INTO "bag_solubility" ("State", "Bag", "Position", "Celsius", "GramsPerKgWater") VALUES (2, 0, 0, 0.0, 706.0);
INSERT INTO "bag_solubility" ("State", "Bag", "Position", "Celsius", "GramsPerKgWater") VALUES (2, 0, 1, 10.0, 730.0);
INSERT INTO "bag_solubility" ("State", "Bag", "Position", "Celsius", "GramsPerKgWater") VALUES (2, 0, 2, 20.0, 754.0);
INSERT INTO "bag_solubility" ("State", "Bag", "Position", "Celsius", "GramsPerKgWater") VALUES (2, 0, 3, 25.0, 764.0);
INSERT INTO "bag_solubility" ("State", "Bag", "Position", "Celsius", "GramsPerKgWater") VALUES (2, 1, 0, 0.0, 133.0);
INSERT INTO "bag_solubility" ("State", "Bag", "Position", "Celsius", "GramsPerKgWater") VALUES (2, 1, 1, 20.0, 316.0);
INSERT INTO "bag_solubility" ("State", "Bag", "Position", "Celsius", "GramsPerKgWater") VALUES (2, 1, 2, 25.0, 383.0);
INSERT INTO "bag_solubility" ("State", "Bag", "Position", "Celsius", "GramsPerKgWater") VALUES (2, 2, 0, 0.0, 227.0);
INSERT INTO "bag_solubility" ("State", "Bag", "Position", "Celsius", "GramsPerKgWater") VALUES (2, 2, 1, 20.0, 368.0);
INSERT INTO "bag_solubility" ("State", "Bag", "Position", "Celsius", "GramsPerKgWater") VALUES (2, 2, 2, 25.0, 404.0);
INSERT INTO "bag_spread" ("State", "Bag", "Nutrient", "Min", "Typical", "Max") VALUES (1, 0, 'N', 0.205, 0.21, 0.212);
INSERT INTO "bag_spread" ("State", "Bag", "Nutrient", "Min", "Typical", "Max") VALUES (1, 0, 'S', 0.23, 0.24, 0.24263);
INSERT INTO "bag_spread" ("State", "Bag", "Nutrient", "Min", "Typical", "Max") VALUES (1, 1, 'K', 0.44, 0.455, 0.46584000000000003);
INSERT INTO "bag_spread" ("State", "Bag", "Nutrient", "Min", "Typical", "Max") VALUES (1, 1, 'N', 0.13, 0.135, 0.138);
INSERT INTO "bag_spread" ("State", "Bag", "Nutrient", "Min", "Typical", "Max") VALUES (1, 2, 'N', 0.12, 0.12, 0.12176999999999999);
INSERT INTO "bag_spread" ("State", "Bag", "Nutrient", "Min", "Typical", "Max") VALUES (1, 2, 'P', 0.6, 0.61, 0.617);
INSERT INTO "bag_spread" ("State", "Bag", "Nutrient", "Min", "Typical", "Max") VALUES (2, 0, 'N', 0.205, 0.21, 0.212);
INSERT INTO "bag_spread" ("State", "Bag", "Nutrient", "Min", "Typical", "Max") VALUES (2, 0, 'S', 0.23, 0.24, 0.24263);
INSERT INTO "bag_spread" ("State", "Bag", "Nutrient", "Min", "Typical", "Max") VALUES (2, 1, 'K', 0.44, 0.455, 0.46584000000000003);
INSERT INTO "bag_spread" ("State", "Bag", "Nutrient", "Min", "Typical", "Max") VALUES (2, 1, 'N', 0.13, 0.135, 0.138);
INSERT INTO "bag_spread" ("State", "Bag", "Nutrient", "Min", "Typical", "Max") VALUES (2, 2, 'N', 0.12, 0.12, 0.12176999999999999);
INSERT INTO "bag_spread" ("State", "Bag", "Nutrient", "Min", "Typical", "Max") VALUES (2, 2, 'P', 0.6, 0.61, 0.617);
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 0, 'hazard', 0, 'AmmoniaWithAlkali');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 0, 'hazard', 1, 'Dust');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 0, 'hazard', 2, 'LeafBurn');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 0, 'hazardWords', 0, 'keeps ammonium: gives off ammonia with lime, wood ash, hydroxides, carbonates, alkaline slag when moist');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 0, 'hazardWords', 1, 'acid residue corrodes mild steel and concrete; dust mildly irritant');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 0, 'ion', 0, 'ammonium');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 0, 'ion', 1, 'sulfate');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 0, 'otherName', 0, 'sulphate of ammonia');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 0, 'otherName', 1, 'AS');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 0, 'otherName', 2, '21-0-0-24S');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 0, 'regulation', 0, 'EC 2003/2003 type: at least 19.7-20 % N');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 1, 'hazard', 0, 'Oxidiser');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 1, 'hazard', 1, 'ExplosivePrecursor');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 1, 'hazard', 2, 'LeafBurn');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 1, 'hazardWords', 0, 'oxidiser: keep from fuel, oil, sulfur, sawdust, oil-cake and any meal, and from heat');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 1, 'ion', 0, 'potassium');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 1, 'ion', 1, 'nitrate');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 1, 'otherName', 0, 'saltpetre');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 1, 'otherName', 1, 'nitrate of potash');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 1, 'otherName', 2, '13-0-46');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 1, 'otherName', 3, '13-0-44');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 1, 'regulation', 0, 'EU 2019/1148 Annex II (reportable)');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 2, 'hazard', 0, 'AmmoniaWithAlkali');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 2, 'hazardWords', 0, 'low hazard; solution pH about 4.2-4.5');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 2, 'hazardWords', 1, 'keeps ammonium: gives off ammonia with lime, wood ash, hydroxides, carbonates, alkaline slag when moist');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 2, 'ion', 0, 'ammonium');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 2, 'ion', 1, 'phosphate');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 2, 'note', 0, 'The salt index, measured on mineral soil, understates phosphates in soilless media.');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 2, 'otherName', 0, 'MAP soluble');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (1, 2, 'otherName', 1, '12-61-0');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 0, 'hazard', 0, 'AmmoniaWithAlkali');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 0, 'hazard', 1, 'Dust');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 0, 'hazard', 2, 'LeafBurn');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 0, 'hazardWords', 0, 'keeps ammonium: gives off ammonia with lime, wood ash, hydroxides, carbonates, alkaline slag when moist');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 0, 'hazardWords', 1, 'acid residue corrodes mild steel and concrete; dust mildly irritant');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 0, 'ion', 0, 'ammonium');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 0, 'ion', 1, 'sulfate');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 0, 'otherName', 0, 'sulphate of ammonia');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 0, 'otherName', 1, 'AS');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 0, 'otherName', 2, '21-0-0-24S');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 0, 'regulation', 0, 'EC 2003/2003 type: at least 19.7-20 % N');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 1, 'hazard', 0, 'Oxidiser');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 1, 'hazard', 1, 'ExplosivePrecursor');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 1, 'hazard', 2, 'LeafBurn');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 1, 'hazardWords', 0, 'oxidiser: keep from fuel, oil, sulfur, sawdust, oil-cake and any meal, and from heat');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 1, 'ion', 0, 'potassium');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 1, 'ion', 1, 'nitrate');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 1, 'otherName', 0, 'saltpetre');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 1, 'otherName', 1, 'nitrate of potash');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 1, 'otherName', 2, '13-0-46');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 1, 'otherName', 3, '13-0-44');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 1, 'regulation', 0, 'EU 2019/1148 Annex II (reportable)');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 2, 'hazard', 0, 'AmmoniaWithAlkali');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 2, 'hazardWords', 0, 'low hazard; solution pH about 4.2-4.5');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 2, 'hazardWords', 1, 'keeps ammonium: gives off ammonia with lime, wood ash, hydroxides, carbonates, alkaline slag when moist');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 2, 'ion', 0, 'ammonium');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 2, 'ion', 1, 'phosphate');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 2, 'note', 0, 'The salt index, measured on mineral soil, understates phosphates in soilless media.');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 2, 'otherName', 0, 'MAP soluble');
INSERT INTO "bag_word" ("State", "Bag", "List", "Position", "Text") VALUES (2, 2, 'otherName', 1, '12-61-0');
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (1, 0, 'Cl', 0.00071999999999999994);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (1, 0, 'K', 0.1638);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (1, 0, 'N', 0.1749);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (1, 0, 'P', 0.0549);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (1, 0, 'S', 0.132);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (1, 1, 'Ca', 0.058750000000000004);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (1, 1, 'Cu', 5.9999999999999993e-06);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (1, 1, 'Fe', 0.00042500000000000003);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (1, 1, 'K', 0.0093999999999999986);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (1, 1, 'Mg', 0.0032500000000000003);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (1, 1, 'Mn', 2.0e-05);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (1, 1, 'N', 0.0226);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (1, 1, 'P', 0.0574);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (1, 1, 'S', 0.008);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (1, 1, 'Zn', 1.875e-05);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (2, 0, 'Cl', 0.00071999999999999994);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (2, 0, 'K', 0.1638);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (2, 0, 'N', 0.1749);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (2, 0, 'P', 0.0549);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (2, 0, 'S', 0.132);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (2, 1, 'Ca', 0.058750000000000004);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (2, 1, 'Cu', 5.9999999999999993e-06);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (2, 1, 'Fe', 0.00042500000000000003);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (2, 1, 'K', 0.0093999999999999986);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (2, 1, 'Mg', 0.0032500000000000003);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (2, 1, 'Mn', 2.0e-05);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (2, 1, 'N', 0.0226);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (2, 1, 'P', 0.0574);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (2, 1, 'S', 0.008);
INSERT INTO "feed_content" ("State", "Feed", "Nutrient", "Fraction") VALUES (2, 1, 'Zn', 1.875e-05);
INSERT INTO "feed_part" ("State", "Feed", "MaterialId", "Share") VALUES (1, 0, 'ammonium-sulfate', 0.55);
INSERT INTO "feed_part" ("State", "Feed", "MaterialId", "Share") VALUES (1, 0, 'map-technical', 0.09);
INSERT INTO "feed_part" ("State", "Feed", "MaterialId", "Share") VALUES (1, 0, 'potassium-nitrate', 0.36);
INSERT INTO "feed_part" ("State", "Feed", "MaterialId", "Share") VALUES (1, 1, 'bone-meal-steamed', 0.2);
INSERT INTO "feed_part" ("State", "Feed", "MaterialId", "Share") VALUES (1, 1, 'neem-cake', 0.5);
INSERT INTO "feed_part" ("State", "Feed", "MaterialId", "Share") VALUES (1, 1, 'vermicompost', 0.3);
INSERT INTO "feed_part" ("State", "Feed", "MaterialId", "Share") VALUES (2, 0, 'ammonium-sulfate', 0.55);
INSERT INTO "feed_part" ("State", "Feed", "MaterialId", "Share") VALUES (2, 0, 'map-technical', 0.09);
INSERT INTO "feed_part" ("State", "Feed", "MaterialId", "Share") VALUES (2, 0, 'potassium-nitrate', 0.36);
INSERT INTO "feed_part" ("State", "Feed", "MaterialId", "Share") VALUES (2, 1, 'bone-meal-steamed', 0.2);
INSERT INTO "feed_part" ("State", "Feed", "MaterialId", "Share") VALUES (2, 1, 'neem-cake', 0.5);
INSERT INTO "feed_part" ("State", "Feed", "MaterialId", "Share") VALUES (2, 1, 'vermicompost', 0.3);
INSERT INTO "scoop_calibration" ("State", "Scoop", "MaterialId", "Min", "Typical", "Max") VALUES (1, 0, 'ammonium-sulfate', 4.8, 5.1, 5.4);
INSERT INTO "scoop_calibration" ("State", "Scoop", "MaterialId", "Min", "Typical", "Max") VALUES (1, 0, 'neem-cake', 2.3, 2.6, 2.9);
INSERT INTO "scoop_calibration" ("State", "Scoop", "MaterialId", "Min", "Typical", "Max") VALUES (1, 0, 'terrace-blend', 5.0, 5.3, 5.6);
INSERT INTO "scoop_calibration" ("State", "Scoop", "MaterialId", "Min", "Typical", "Max") VALUES (1, 1, 'tide-mix', 7.6, 8.4, 9.2);
INSERT INTO "scoop_calibration" ("State", "Scoop", "MaterialId", "Min", "Typical", "Max") VALUES (2, 0, 'ammonium-sulfate', 4.8, 5.1, 5.4);
INSERT INTO "scoop_calibration" ("State", "Scoop", "MaterialId", "Min", "Typical", "Max") VALUES (2, 0, 'neem-cake', 2.3, 2.6, 2.9);
INSERT INTO "scoop_calibration" ("State", "Scoop", "MaterialId", "Min", "Typical", "Max") VALUES (2, 0, 'terrace-blend', 5.0, 5.3, 5.6);
INSERT INTO "scoop_calibration" ("State", "Scoop", "MaterialId", "Min", "Typical", "Max") VALUES (2, 1, 'tide-mix', 7.6, 8.4, 9.2);
INSERT INTO "water" ("State", "Position", "WaterId", "Name", "Note", "PH", "Celsius", "Ec", "EcUnit", "EcCelsius") VALUES (1, 0, 'harbour-tap', 'Harbour tap water', 'Yearly sheet of the town''s works: moderately hard, slightly alkaline.', 7.7, 20.0, 421.0, 'µS/cm', 20.0);
INSERT INTO "water" ("State", "Position", "WaterId", "Name", "Note", "PH", "Celsius", "Ec", "EcUnit", "EcCelsius") VALUES (2, 0, 'harbour-tap', 'Harbour tap water', 'Yearly sheet of the town''s works: moderately hard, slightly alkaline.', 7.7, 20.0, 421.0, 'µS/cm', 20.0);
INSERT INTO "water_line" ("State", "Water", "Position", "Name", "Value", "Unit", "Below") VALUES (1, 0, 0, 'total hardness', 9.5, '°dH', 0);
INSERT INTO "water_line" ("State", "Water", "Position", "Name", "Value", "Unit", "Below") VALUES (1, 0, 1, 'Ca', 54.0, NULL, 0);
INSERT INTO "water_line" ("State", "Water", "Position", "Name", "Value", "Unit", "Below") VALUES (1, 0, 2, 'Na', 26.0, NULL, 0);
INSERT INTO "water_line" ("State", "Water", "Position", "Name", "Value", "Unit", "Below") VALUES (1, 0, 3, 'K', 2.6, NULL, 0);
INSERT INTO "water_line" ("State", "Water", "Position", "Name", "Value", "Unit", "Below") VALUES (1, 0, 4, 'HCO3', 171.0, NULL, 0);
INSERT INTO "water_line" ("State", "Water", "Position", "Name", "Value", "Unit", "Below") VALUES (1, 0, 5, 'Cl', 38.0, NULL, 0);
INSERT INTO "water_line" ("State", "Water", "Position", "Name", "Value", "Unit", "Below") VALUES (1, 0, 6, 'SO4', 31.0, NULL, 0);
INSERT INTO "water_line" ("State", "Water", "Position", "Name", "Value", "Unit", "Below") VALUES (1, 0, 7, 'NO3', 9.0, NULL, 0);
INSERT INTO "water_line" ("State", "Water", "Position", "Name", "Value", "Unit", "Below") VALUES (1, 0, 8, 'B', 40.0, 'µg/L', 0);
INSERT INTO "water_line" ("State", "Water", "Position", "Name", "Value", "Unit", "Below") VALUES (2, 0, 0, 'total hardness', 9.5, '°dH', 0);
INSERT INTO "water_line" ("State", "Water", "Position", "Name", "Value", "Unit", "Below") VALUES (2, 0, 1, 'Ca', 54.0, NULL, 0);
INSERT INTO "water_line" ("State", "Water", "Position", "Name", "Value", "Unit", "Below") VALUES (2, 0, 2, 'Na', 26.0, NULL, 0);
INSERT INTO "water_line" ("State", "Water", "Position", "Name", "Value", "Unit", "Below") VALUES (2, 0, 3, 'K', 2.6, NULL, 0);
INSERT INTO "water_line" ("State", "Water", "Position", "Name", "Value", "Unit", "Below") VALUES (2, 0, 4, 'HCO3', 171.0, NULL, 0);
INSERT INTO "water_line" ("State", "Water", "Position", "Name", "Value", "Unit", "Below") VALUES (2, 0, 5, 'Cl', 38.0, NULL, 0);
INSERT INTO "water_line" ("State", "Water", "Position", "Name", "Value", "Unit", "Below") VALUES (2, 0, 6, 'SO4', 31.0, NULL, 0);
INSERT INTO "water_line" ("State", "Water", "Position", "Name", "Value", "Unit", "Below") VALUES (2, 0, 7, 'NO3', 9.0, NULL, 0);
INSERT INTO "water_line" ("State", "Water", "Position", "Name", "Value", "Unit", "Below") VALUES (2, 0, 8, 'B', 40.0, 'µg/L', 0);
COMMIT;
