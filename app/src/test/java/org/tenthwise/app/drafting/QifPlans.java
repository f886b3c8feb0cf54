package org.tenthwise.app.drafting;

/** Invented plans as QIF 3.0 documents. */
final class QifPlans {

    private QifPlans() {}

    /** One diameter with its limits, sheet, zone and mark. */
    static final String DIAMETER =
            """
            <?xml version="1.0" encoding="UTF-8"?>
            <QIFDocument xmlns="http://qifstandards.org/xsd/qif3" versionQIF="3.0.0" idMax="9">
              <QPId>8f0d3c52-7a1e-4b56-9c0a-2f6f1b7e4d10</QPId>
              <FileUnits><PrimaryUnits>
                <AngularUnit><SIUnitName>radian</SIUnitName><UnitName>degree</UnitName>
                  <UnitConversion><Factor>0.0174532925199433</Factor></UnitConversion></AngularUnit>
                <LinearUnit><SIUnitName>meter</SIUnitName><UnitName>mm</UnitName>
                  <UnitConversion><Factor>0.001</Factor></UnitConversion></LinearUnit>
              </PrimaryUnits></FileUnits>
              <Characteristics>
                <FormalStandardId>1</FormalStandardId>
                <CharacteristicDefinitions n="1">
                  <DiameterCharacteristicDefinition id="2">
                    <Tolerance>
                      <MaxValue decimalPlaces="3">35.018</MaxValue>
                      <MinValue decimalPlaces="3">35.002</MinValue>
                      <DefinedAsLimit>true</DefinedAsLimit>
                    </Tolerance>
                  </DiameterCharacteristicDefinition>
                </CharacteristicDefinitions>
                <CharacteristicNominals n="1">
                  <DiameterCharacteristicNominal id="3">
                    <CharacteristicDefinitionId>2</CharacteristicDefinitionId>
                    <TargetValue decimalPlaces="3">35.010</TargetValue>
                  </DiameterCharacteristicNominal>
                </CharacteristicNominals>
                <CharacteristicItems n="1">
                  <DiameterCharacteristicItem id="4">
                    <Name>Bearing seat</Name>
                    <CharacteristicDesignator><Designator>7</Designator>
                      <Criticality><LevelEnum>KEY</LevelEnum></Criticality></CharacteristicDesignator>
                    <CharacteristicNominalId>3</CharacteristicNominalId>
                    <LocationOnDrawing><DrawingId>5</DrawingId><SheetNumber>2</SheetNumber>
                      <DrawingZone>C4</DrawingZone></LocationOnDrawing>
                  </DiameterCharacteristicItem>
                </CharacteristicItems>
              </Characteristics>
            </QIFDocument>
            """;

    /** Two items of one nominal, each with a number of its own, and one they have together. */
    static final String TWO_ALIKE = DIAMETER.replace(
                    "<Tolerance>",
                    "<CharacteristicDesignator><Designator>7</Designator></CharacteristicDesignator><Tolerance>")
            .replace("<CharacteristicItems n=\"1\">", "<CharacteristicItems n=\"2\">")
            .replace("<Designator>7</Designator>\n", "<Designator>7-1</Designator>\n")
            .replace(
                    "</CharacteristicItems>",
                    """
                      <DiameterCharacteristicItem id="6">
                        <CharacteristicDesignator><Designator>7-2</Designator></CharacteristicDesignator>
                        <CharacteristicNominalId>3</CharacteristicNominalId>
                      </DiameterCharacteristicItem>
                    </CharacteristicItems>""");
}
